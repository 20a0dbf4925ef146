import { COLUMN_BY_NAME } from './columns';
import type { Column } from './column';
import type { ColumnMapping, ColumnProfile, SourceUnit } from './mapping';
import { lookupWord } from './plain-text';
import { plainWords } from './plain-words';
import { settledDateOrder } from './settled-date-order';
import { settledDecimal, type DecimalEvidence } from './settled-decimal';
import { settledUnit } from './settled-unit';
import { wordSynonyms } from './word-synonyms';

/** Two letters may be somebody's initials: as an id they are asked about. */
const mayBeInitials = (word: string): boolean => /^\p{L}{2,3}$/u.test(word);

/** The words for a missing value that a column holds; of an id those that can be nothing else. */
const missingWordsOf = (column: Column, { missing = [] }: ColumnProfile): Readonly<Record<string, string>> => {
  if (column.type === 'text' && column.name !== 'client_id') return {};
  const words = missing.map(({ word }) => lookupWord(word));
  return Object.fromEntries(
    words.filter((word) => column.type !== 'text' || !mayBeInitials(word)).map((word) => [word, '']),
  );
};

/** Words of the column that differ from the canonical ones and have a plain meaning. */
export const wordsOf = (to: string, profile: ColumnProfile): Readonly<Record<string, string>> => {
  const column = COLUMN_BY_NAME.get(to);
  if (column === undefined) return {};
  const missing = missingWordsOf(column, profile);
  if (column.type !== 'flag' && column.type !== 'choice') return missing;
  const plain = profile.words === null ? Object.fromEntries(wordSynonyms(column)) : plainWords(column, profile).plain;
  const differing = Object.entries(plain).filter(([word, canonical]) => word !== canonical.toLowerCase());
  return { ...missing, ...Object.fromEntries(differing) };
};

const isExactDay = (text: string): boolean => /^\d{4}-\d{2}-\d{2}$/.test(text);

/**
 * A column's mapping with all that its heading and cells settle: unit, decimal mark, order of dates, plain words. What
 * stays open is left out and asked. Under its canonical name a column whose cells are canonical gets nothing at all.
 */
export const completeColumn = (
  given: ColumnMapping,
  profile: ColumnProfile,
  heading: { readonly exact: boolean; readonly unit: SourceUnit | null },
  table: DecimalEvidence,
): ColumnMapping => {
  const column = COLUMN_BY_NAME.get(given.to);
  const words = wordsOf(given.to, profile);
  const bare = Object.keys(words).length === 0 ? given : { ...given, words };
  switch (column?.type) {
    case 'number': {
      const unit = settledUnit(column, profile, heading.unit, table);
      const decimal = settledDecimal(profile, table);
      return {
        ...bare,
        ...(unit === undefined || (heading.exact && unit === column.unit) ? {} : { unit }),
        ...(decimal === undefined || (heading.exact && decimal === '.') ? {} : { decimal }),
      };
    }
    case 'date': {
      const dateOrder = settledDateOrder(profile);
      const plain = dateOrder === 'ymd' && heading.exact && profile.samples.every(isExactDay);
      return { ...bare, ...(dateOrder === undefined || plain ? {} : { dateOrder }) };
    }
    default:
      return bare;
  }
};
