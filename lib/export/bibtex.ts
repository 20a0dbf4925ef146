import type { Citation } from '../measures/citation';
import { bibtexAddress, bibtexText } from './bibtex-text';
import { citationNote } from './citation-note';
import { keyedCitations, type KeyedCitation } from './keyed-citations';
import { personName } from './person-name';

/**
 * Names and publishers are joined by the word `and`, names split at commas, and BibLaTeX reads an equals sign as a part of a
 * name: what holds one of them is kept whole in braces.
 */
const whole = (name: string): string => {
  const text = bibtexText(name);
  return /\band\b|[,=]/iu.test(name) ? `{${text}}` : text;
};

const authorText = (author: string): string => {
  const name = personName(author);
  return 'literal' in name ? `{${bibtexText(name.literal)}}` : `${whole(name.family)}, ${whole(name.given)}`;
};

const authorsText = ({ authors, andOthers }: Citation): string | undefined =>
  authors.length === 0
    ? undefined
    : [...authors.map(authorText), ...(andOthers === true ? ['others'] : [])].join(' and ');

const pagesText = (pages: string): string => bibtexText(pages.replace(/\s*[–—-]+\s*/gu, '–')).replaceAll('–', '--');

const typeOf = ({ journal, publisher }: Citation): 'article' | 'techreport' | 'misc' =>
  journal === undefined ? (publisher === undefined ? 'misc' : 'techreport') : 'article';

const on = (write: (text: string) => string, text: string | undefined): string | undefined =>
  text === undefined ? undefined : write(text);

const fieldsOf = (citation: Citation): readonly (readonly [string, string | undefined])[] => {
  const { title, journal, publisher, year, volume, issue, pages, doi, url } = citation;
  return [
    ['author', authorsText(citation)],
    ['title', on((text) => `{${bibtexText(text)}}`, title)],
    ['journal', on(bibtexText, journal)],
    [journal === undefined ? 'institution' : 'publisher', on(whole, publisher)],
    ['year', String(year)],
    ['volume', on(bibtexText, volume)],
    ['number', on(bibtexText, issue)],
    ['pages', on(pagesText, pages)],
    ['doi', on(bibtexAddress, doi)],
    ['url', on(bibtexAddress, url)],
    ['note', on(bibtexText, citationNote(citation))],
  ];
};

const entry = ({ key, citation }: KeyedCitation): string => {
  const fields = fieldsOf(citation).flatMap(([name, value]) =>
    value === undefined ? [] : [`  ${name} = {${value}},\n`],
  );
  return `@${typeOf(citation)}{${key},\n${fields.join('')}}\n`;
};

/**
 * A BibTeX file in UTF-8, one entry per work: `@article` where a journal is known, `@techreport` where a publisher is,
 * else `@misc`. Only fields that are known stand there; `note` says what is from memory.
 */
export const toBibtex = (citations: readonly Citation[]): string => keyedCitations(citations).map(entry).join('\n');
