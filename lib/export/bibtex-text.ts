const ESCAPED: Readonly<Record<string, string>> = {
  '&': '\\&',
  '%': '\\%',
  _: '\\_',
  '#': '\\#',
  $: '\\$',
  '{': '\\textbraceleft{}',
  '}': '\\textbraceright{}',
  '~': '\\textasciitilde{}',
  '^': '\\textasciicircum{}',
  '\\': '\\textbackslash{}',
};

/** Pairs of marks that TeX would draw as one: a dash, a quotation mark, a turned question mark. */
const LIGATURES = /-(?=-)|`(?=`)|'(?=')|[?!](?=`)/gu;

/**
 * A text for a field in braces. Braces become commands, since BibTeX counts escaped ones too; letters beyond ASCII stay
 * UTF-8, white space and control characters become one blank.
 */
export const bibtexText = (text: string): string =>
  text
    .replace(/[\s\p{Cc}]+/gu, ' ')
    .trim()
    .replace(/[&%_#${}~^\\]/gu, (mark) => ESCAPED[mark] ?? mark)
    .replace(LIGATURES, '$&{}');

/** A DOI or address: read verbatim, so what would end the field or the reading is percent-encoded. */
export const bibtexAddress = (address: string): string =>
  address.trim().replace(/[\s\p{Cc}{}\\"<>^`|]/gu, encodeURIComponent);
