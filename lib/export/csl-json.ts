import type { Citation } from '../measures/citation';
import { citationNote } from './citation-note';
import { keyedCitations, type KeyedCitation } from './keyed-citations';
import { personName } from './person-name';

const typeOf = ({ journal, publisher }: Citation): 'article-journal' | 'report' | 'document' =>
  journal === undefined ? (publisher === undefined ? 'document' : 'report') : 'article-journal';

/** CSL joins pages by a hyphen; programs print the dash. */
const pageText = (pages: string): string => pages.replace(/\s*[–—-]+\s*/gu, '-');

const item = ({ key, citation }: KeyedCitation): Readonly<Record<string, unknown>> => ({
  id: key,
  type: typeOf(citation),
  ...(citation.authors.length === 0 ? {} : { author: citation.authors.map(personName) }),
  title: citation.title,
  'container-title': citation.journal,
  publisher: citation.publisher,
  issued: { 'date-parts': [[citation.year]] },
  volume: citation.volume,
  issue: citation.issue,
  page: citation.pages === undefined ? undefined : pageText(citation.pages),
  DOI: citation.doi,
  URL: citation.url,
  note: citationNote(citation),
});

/**
 * A CSL-JSON file (csl-data of CSL 1.0.2), one item per work with its BibTeX key as id: `article-journal`, `report`, or
 * `document` where neither journal nor publisher is known. Only fields that are known stand there.
 */
export const toCslJson = (citations: readonly Citation[]): string =>
  `${JSON.stringify(keyedCitations(citations).map(item), null, 2)}\n`;
