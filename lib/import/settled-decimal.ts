import type { ColumnProfile } from './mapping';

/** Which decimal marks the number columns of a table show. */
export interface DecimalEvidence {
  readonly point: boolean;
  readonly comma: boolean;
}

/** What the columns that are read as numbers show together. */
export const decimalEvidence = (columns: readonly ColumnProfile[]): DecimalEvidence => ({
  point: columns.some(({ numbers }) => numbers.point > 0),
  comma: columns.some(({ numbers }) => numbers.comma > 0),
});

/**
 * A number column's decimal mark where its own cells leave no doubt, or the table's other number columns where its own
 * cells could be read either way. Undefined: a person is asked.
 */
export const settledDecimal = ({ numbers }: ColumnProfile, table: DecimalEvidence): '.' | ',' | undefined => {
  const { point, comma, either } = numbers;
  if (comma === 0 && either === 0) return point > 0 && table.comma ? undefined : '.';
  if (point > 0) return undefined;
  if (comma > 0) return ',';
  return table.comma && !table.point ? ',' : undefined;
};
