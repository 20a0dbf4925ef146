import { sameRow } from './row-changes';
import type { ClientRow } from './use-client-rows';

const visitOf = ({ cells }: ClientRow): string =>
  JSON.stringify([
    cells.visit_date ?? '',
    (cells.visit_purpose ?? '') === '' ? 'routine' : cells.visit_purpose,
    cells.device_id ?? '',
  ]);

const isUsed = ({ status }: ClientRow): boolean => status === 'accepted' || status === 'held';

/** A reading and the others of its visit that are used: one day, one purpose, one device. */
export const rowsOfVisit = (row: ClientRow, rows: readonly ClientRow[]): readonly ClientRow[] =>
  rows.filter((other) => sameRow(other.row, row.row) || (isUsed(other) && visitOf(other) === visitOf(row)));
