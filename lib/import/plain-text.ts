const EVERY_MARK = /[\u00A0\u00AD\u2000-\u200F\u2028-\u202F\u205F-\u2064\u2066-\u2069\u3000\uFEFF]/g;
const SPACES = /[\u00A0\u2000-\u200A\u202F\u205F\u3000]/g;

/** As spreadsheets are made to take digits for text. */
const AS_FORMULA = /^="([^"]*)"$/;

/** A cell as text without characters that cannot be seen; wide spaces become plain ones, the ends are trimmed, `="00123"` is 00123. */
export const plainText = (cell: string): string =>
  cell.replace(SPACES, ' ').replace(EVERY_MARK, '').trim().replace(AS_FORMULA, '$1').trim();

/** A word as it is looked up: plain text in lower case, several spaces as one. */
export const lookupWord = (cell: string): string => plainText(cell).toLowerCase().replace(/\s+/g, ' ');

/** The words of a header in lower case without accents: cut at signs, before a digit and at a capital inside a word. */
export const plainTokens = (header: string): readonly string[] =>
  header
    .replace(/(\p{Ll}{2})(\p{Lu})/gu, '$1 $2')
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replaceAll('ß', 'ss')
    .replace(/(\p{L})(\d)/gu, '$1 $2')
    .replace(/(\d)(\p{L})/gu, '$1 $2')
    .split(/[^\p{L}\p{N}%°]+/u)
    .filter((token) => token !== '');
