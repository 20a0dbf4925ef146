import type { RowRef } from '../../../lib/import/plan';
import type { Correction, SetAside } from '../../../lib/workspace/clinic-state';

export const sameRow = (one: RowRef, other: RowRef): boolean =>
  one.source === other.source && one.line === other.line && one.part === other.part;

/** What the clinic changed about one row. */
export interface RowChanges {
  readonly corrections: readonly Correction[];
  readonly setAside: SetAside | undefined;
}

export const rowChanges = (
  row: RowRef,
  corrections: readonly Correction[],
  setAside: readonly SetAside[],
): RowChanges => ({
  corrections: corrections.filter((correction) => sameRow(correction.row, row)),
  setAside: setAside.find((entry) => sameRow(entry.row, row)),
});
