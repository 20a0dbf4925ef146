/**
 * A work that a formula, a reference or a cut-off comes from. What was not read is left out, never filled in; parts known
 * from memory alone are named in `fromMemory`.
 */
export interface Citation {
  /** Key of the work in lists of references, for example `kyle-2001`. */
  readonly id: string;
  /** Empty where the names were not read. */
  readonly authors: readonly string[];
  /** Further authors who are not listed. */
  readonly andOthers?: boolean;
  readonly title?: string;
  readonly journal?: string;
  /** Books and reports. */
  readonly publisher?: string;
  readonly year: number;
  readonly volume?: string;
  readonly issue?: string;
  readonly pages?: string;
  readonly doi?: string;
  readonly url?: string;
  readonly fromMemory?: readonly ('authors' | 'journal' | 'volume' | 'pages' | 'doi' | 'year')[];
}

/** A citation in one line: authors, title, journal, year, volume and pages, DOI or else the address. */
export const citationLine = (citation: Citation): string => {
  const people = `${citation.authors.join(', ')}${citation.andOthers === true ? ' et al.' : ''}`;
  const volume = citation.volume === undefined ? '' : `;${citation.volume}`;
  const pages = citation.pages === undefined ? '' : `:${citation.pages}`;
  const where = [citation.journal ?? citation.publisher ?? '', `${String(citation.year)}${volume}${pages}`];
  const address = citation.doi === undefined ? citation.url : `doi ${citation.doi}`;
  return [
    people === '' || people.endsWith('.') ? people : `${people}.`,
    citation.title === undefined ? '' : `${citation.title}.`,
    ...where,
  ]
    .filter((part) => part !== '')
    .join(' ')
    .concat(address === undefined ? '' : `. ${address}`);
};
