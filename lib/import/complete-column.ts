import { COLUMN_BY_NAME } from './columns';
import type { ColumnMapping, ColumnProfile, SourceUnit } from './mapping';
import { plainWords } from './plain-words';
import { settledDateOrder } from './settled-date-order';
import { settledDecimal, type DecimalEvidence } from './settled-decimal';
import { settledUnit } from './settled-unit';
import { wordSynonyms } from './word-synonyms';

/** Words of the column that differ from the canonical ones and have a plain meaning. */
export const wordsOf = (to: string, profile: ColumnProfile): Readonly<Record<string, string>> => {
  const column = COLUMN_BY_NAME.get(to);
  if (column === undefined) return {};
  const plain = profile.words === null ? Object.fromEntries(wordSynonyms(column)) : plainWords(column, profile).plain;
  return Object.fromEntries(Object.entries(plain).filter(([word, canonical]) => word !== canonical.toLowerCase()));
};

const isExactDay = (text: string): boolean => /^\d{4}-\d{2}-\d{2}$/.test(text);

/**
 * A column's mapping with all that its heading and cells settle: unit, decimal mark, order of dates, plain words. What
 * stays open is left out and asked. Under its canonical name a column whose cells are canonical gets nothing at all.
 */
export const completeColumn = (
  bare: ColumnMapping,
  profile: ColumnProfile,
  heading: { readonly exact: boolean; readonly unit: SourceUnit | null },
  table: DecimalEvidence,
): ColumnMapping => {
  const column = COLUMN_BY_NAME.get(bare.to);
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
    case 'flag':
    case 'choice': {
      const words = wordsOf(bare.to, profile);
      return { ...bare, ...(Object.keys(words).length === 0 ? {} : { words }) };
    }
    default:
      return bare;
  }
};
