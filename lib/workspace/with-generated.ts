/** A block of a page that is generated, between `<!-- name:begin -->` and `<!-- name:end -->`. */
export interface GeneratedBlock {
  readonly name: string;
  /** Stands above the block where a page does not hold it yet. */
  readonly heading: string;
  readonly text: () => string;
}

/** A page with one block made current; a page without its marks gets them at the end, under the heading. */
export const withGenerated = (page: string, { name, heading, text }: GeneratedBlock): string => {
  const [begin, end] = [`<!-- ${name}:begin -->`, `<!-- ${name}:end -->`];
  const block = `${begin}\n\n${text()}\n\n${end}`;
  const [from, to] = [page.indexOf(begin), page.indexOf(end)];
  if (from >= 0 && to > from) return page.slice(0, from) + block + page.slice(to + end.length);
  const before = page.trimEnd();
  return `${before}${before === '' ? '' : '\n\n'}${heading}\n\n${block}\n`;
};
