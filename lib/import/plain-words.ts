import type { Column } from './column';
import type { ColumnProfile } from './mapping';
import { lookupWord } from './plain-text';
import { wordSynonyms } from './word-synonyms';

/** What a column's words say without doubt, and the words that only a person can read. */
export interface PlainWords {
  readonly plain: Readonly<Record<string, string>>;
  readonly open: readonly { readonly word: string; readonly count: number }[];
}

const ZERO_ONE: Readonly<Record<string, string>> = { '1': 'y', '0': 'n' };

/** Beside an `h` (hombre, homme) and without an `f`, an `m` can be a woman (mujer). */
const isDoubtful = (column: Column, word: string, all: ReadonlySet<string>): boolean =>
  column.name.startsWith('sex') && word === 'm' && all.has('h') && !all.has('f');

/**
 * Splits the words found in a choice or flag column: plain synonyms with their canonical word, and the open ones. 1 and
 * 0 are yes and no where a flag column holds nothing else; everywhere else digits are open.
 */
export const plainWords = (column: Column, profile: ColumnProfile): PlainWords => {
  const known = wordSynonyms(column);
  const counts = new Map<string, number>();
  for (const { word, count } of profile.words ?? []) {
    const key = lookupWord(word);
    counts.set(key, (counts.get(key) ?? 0) + count);
  }
  const all = new Set(counts.keys());
  const coded = column.type === 'flag' && all.size > 0 && [...all].every((word) => word in ZERO_ONE);
  const plain: Record<string, string> = {};
  const open: { word: string; count: number }[] = [];
  for (const [word, count] of counts) {
    const to = coded ? ZERO_ONE[word] : known.get(word);
    if (to === undefined || isDoubtful(column, word, all)) open.push({ word, count });
    else plain[word] = to;
  }
  return { plain, open };
};
