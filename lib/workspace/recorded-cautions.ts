import { parseIsoDate, type IsoDate } from '../core/iso-date';
import { COLUMNS } from '../import/columns';
import type { KeptRow } from '../import/kept-rows';

/** A caution that the clinic's rows record of one client. */
export interface RecordedCaution {
  /** The column's name. */
  readonly column: string;
  /** `y` for a flag, else what the column says: a choice, or weeks. */
  readonly value: string;
  /** The days on which it was recorded, the earliest first. */
  readonly dates: readonly IsoDate[];
}

/** Says when a session was, which is no caution by itself. */
const TIMING = 'hours_since_dialysis';
const CAUTIONS = COLUMNS.filter(({ role, name }) => role === 'caution' && name !== TIMING);
const NOTHING = new Set(['', 'n', 'none']);

/** The cautions in the rows that are used, in the order of the columns. */
export const recordedCautions = (rows: readonly Pick<KeptRow, 'status' | 'cells'>[]): readonly RecordedCaution[] => {
  const used = rows.filter(({ status }) => status === 'accepted');
  return CAUTIONS.flatMap(({ name }) => {
    const days = new Map<string, Set<IsoDate>>();
    for (const { cells } of used) {
      const value = cells[name] ?? '';
      const date = parseIsoDate(cells['visit_date'] ?? '');
      if (NOTHING.has(value) || date === undefined) continue;
      days.set(value, (days.get(value) ?? new Set<IsoDate>()).add(date));
    }
    return [...days].map(([value, dates]) => ({ column: name, value, dates: [...dates].sort() }));
  });
};
