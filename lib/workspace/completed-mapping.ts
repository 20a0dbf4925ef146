import { COLUMN_BY_NAME } from '../import/columns';
import { completeColumn } from '../import/complete-column';
import { guessColumn } from '../import/guess-column';
import type { Mapping } from '../import/mapping';
import type { ReadTable } from '../import/plan';
import { decimalEvidence } from '../import/settled-decimal';

/**
 * A mapping in which a person has chosen a source column anew, with all that the column's heading and cells settle: unit,
 * decimal mark, order of dates, plain words. What stands in `before` stays as it is; what stays open is asked.
 */
export const completedMapping = (table: ReadTable, before: Mapping, after: Mapping): Mapping => {
  const { columns: profiles } = table.profile;
  const numbers = after.columns.filter(({ to }) => COLUMN_BY_NAME.get(to)?.type === 'number');
  const evidence = decimalEvidence(numbers.flatMap(({ from }) => profiles[from[0] ?? -1] ?? []));
  const isOld = (one: Mapping['columns'][number]): boolean =>
    before.columns.some(({ to, reading, from }) => to === one.to && reading === one.reading && from[0] === one.from[0]);
  return {
    ...after,
    columns: after.columns.map((column) => {
      const profile = profiles[column.from[0] ?? -1];
      if (profile === undefined || isOld(column)) return column;
      const guess = guessColumn(profile.name);
      const heading = { exact: guess?.to === column.to && guess.sure === 1, unit: guess?.unit ?? null };
      return { ...completeColumn(column, profile, heading, evidence), ...column };
    }),
  };
};
