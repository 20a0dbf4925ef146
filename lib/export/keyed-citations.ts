import { sameValue } from '../core/same-value';
import type { Citation } from '../measures/citation';

/** A work with the key under which a reference list names it. */
export interface KeyedCitation {
  readonly key: string;
  readonly citation: Citation;
}

/** What every BibTeX program takes as a key. */
const plainKey = (id: string): string => {
  const key = id
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .replace(/[^A-Za-z0-9:._-]+/gu, '-')
    .replace(/^-+|-+$/gu, '');
  return key === '' ? 'work' : key;
};

/** Each work once, in the order of first mention. */
export const distinctCitations = (citations: readonly Citation[]): readonly Citation[] =>
  citations.filter((citation, place) => citations.findIndex((other) => sameValue(other, citation)) === place);

/** Each work once with its id as key; characters that keys cannot hold become `-`, two works of one id are told apart by a number. */
export const keyedCitations = (citations: readonly Citation[]): readonly KeyedCitation[] => {
  const taken = new Set<string>();
  return distinctCitations(citations).map((citation) => {
    const plain = plainKey(citation.id);
    let key = plain;
    for (let number = 2; taken.has(key.toLowerCase()); number += 1) key = `${plain}-${String(number)}`;
    taken.add(key.toLowerCase());
    return { key, citation };
  });
};
