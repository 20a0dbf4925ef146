import { dayOf, LAST_DAY } from '../calendar';
import { type Sex } from '../kyle-ffm';
import { COLUMNS, type VisitRow } from '../visit-row';

/** A row of the file read back, as numbers; NaN where it is empty. */
export interface Reading {
  readonly client: string;
  readonly day: number;
  readonly purpose: string;
  readonly sex: Sex;
  readonly birth: number;
  readonly heightCm: number;
  readonly weightKg: number;
  readonly rOhm: number;
  readonly xcOhm: number;
  readonly exportedFfmKg: number;
  readonly row: VisitRow;
}

const numberIn = (text: string): number => (text === '' ? Number.NaN : Number(text));

/** `om 0171`, `OM0171` and `OM-0171` are one client. */
export const canonicalId = (text: string): string => `OM-${text.replace(/\D/g, '')}`;

const impossible = (reading: Reading): boolean =>
  reading.day > LAST_DAY ||
  reading.day < reading.birth ||
  reading.rOhm <= 5 ||
  reading.xcOhm < 0 ||
  reading.heightCm <= 17 ||
  reading.weightKg <= 0 ||
  reading.weightKg >= 700;

const readingOf = (row: VisitRow): Reading => ({
  client: canonicalId(row.client_id),
  day: dayOf(row.visit_date),
  purpose: row.visit_purpose === '' ? 'routine' : row.visit_purpose,
  // The one marker change of the demo clinic is OM-0101's; most of its visits say M.
  sex: canonicalId(row.client_id) === 'OM-0101' || row.sex === 'M' ? 'M' : 'F',
  birth: dayOf(row.birth_date),
  heightCm: numberIn(row.height_cm),
  weightKg: numberIn(row.weight_kg),
  rOhm: numberIn(row.r_ohm),
  xcOhm: numberIn(row.xc_ohm),
  exportedFfmKg: numberIn(row.ffm_kg),
  row,
});

/** The readings that an import keeps: none refused, none set aside, equal rows once. */
export const usableReadings = (rows: readonly VisitRow[]): Reading[] => {
  const seen = new Set<string>();
  return rows
    .filter((row) => {
      const text = COLUMNS.map((column) => row[column]).join('\u0000');
      return seen.has(text) ? false : seen.add(text);
    })
    .map(readingOf)
    .filter((reading) => !impossible(reading));
};
