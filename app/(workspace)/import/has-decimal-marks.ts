import type { ColumnMapping, ColumnProfile } from '../../../lib/import/mapping';

/** Whether a column holds text numbers with a mark in them, so that its decimal mark is worth a choice. */
export const hasDecimalMarks = (column: ColumnMapping, profile: ColumnProfile | undefined): boolean =>
  column.decimal === ',' || (profile?.samples.some((sample) => /\d[.,]\d/.test(sample)) ?? false);
