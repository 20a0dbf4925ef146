import type { RawCell } from '../formats/raw-table';
import type { Column } from './column';
import type { ColumnMapping, SourceUnit } from './mapping';
import { unitFactor } from './units';

/** The smallest step in which a column's cells were written, in the column's own unit. */
export interface SourceResolution {
  take(cell: RawCell): void;
  /** Undefined where no cell was in another unit: then the cells' own decimals say it. */
  value(): number | undefined;
}

const decimalsOf = (text: string, mark: string): number => {
  const at = text.lastIndexOf(mark);
  if (at < 0) return 0;
  let end = at + 1;
  while (end < text.length && text.charCodeAt(end) >= 48 && text.charCodeAt(end) <= 57) end += 1;
  return end - at - 1;
};

/**
 * Looks at the decimals of a number column's source cells, for a converted cell has more of them than was measured:
 * 150 lb is known to 1 lb, not to the eight decimals of 68.0388555 kg.
 *
 * @param foreign the unit that a cell names itself where it is another one than the column's
 */
export const sourceResolution = (
  column: Column,
  { unit, decimal = '.' }: ColumnMapping,
  foreign: (text: string) => SourceUnit | undefined,
): SourceResolution => {
  const isConverted = unit !== undefined && unit !== column.unit;
  let [finest, hasForeign] = [Infinity, false];
  const stepIn = (source: SourceUnit | undefined): number => {
    const factor = source === undefined ? undefined : unitFactor(column, source);
    return factor === undefined ? 1 : Number(factor.times) / factor.per;
  };
  const ownStep = stepIn(unit);
  return {
    take: (cell) => {
      const text = String(cell);
      const other = typeof cell === 'string' ? foreign(text) : undefined;
      hasForeign ||= other !== undefined;
      const step = other === undefined ? ownStep : stepIn(other);
      finest = Math.min(finest, step * 10 ** -decimalsOf(text, typeof cell === 'number' ? '.' : decimal));
    },
    value: () => (finest < Infinity && (isConverted || hasForeign) ? finest : undefined),
  };
};
