import { sha256 } from '../core/sha256';
import { tableCsv } from '../export/table-csv';
import type { GivenFile } from './workspace';

/** Columns of one reading of the error study as it is written down. */
export const STUDY_COLUMNS = [
  'client_id',
  'visit_date',
  'operator',
  'device_id',
  'reading',
  'height_cm',
  'weight_kg',
  'r_ohm',
  'xc_ohm',
] as const;

/** What the device computed itself: written down where somebody wants it followed. */
export const STUDY_EXPORTED_COLUMNS = ['ffm_kg', 'fm_kg', 'smm_kg', 'phase_angle_deg'] as const;

/** What holds for every row of a study sheet. */
export const STUDY_SHARED_COLUMNS = [
  'site',
  'device_software',
  'electrode_path',
  'posture',
  'electrode_position',
  'fasted_h',
  'since_exercise_h',
  'since_alcohol_h',
] as const;

/** Conditions that one tick says of every row. */
const STANDARD: Readonly<Record<string, string>> = {
  large_drink: 'n',
  bladder_emptied: 'y',
  rested: 'y',
  contact_ok: 'y',
  acute_illness: 'n',
  medication_changed: 'n',
};

export type StudyCell = (typeof STUDY_COLUMNS)[number] | (typeof STUDY_EXPORTED_COLUMNS)[number];
export type StudyShared = (typeof STUDY_SHARED_COLUMNS)[number];
/** Cells as they were typed; what is not there is empty. */
export type StudyRow = Readonly<Partial<Record<StudyCell, string>>>;

/** A study sheet that is being typed in. */
export interface StudySheetDraft {
  readonly rows: readonly StudyRow[];
  readonly shared: Readonly<Partial<Record<StudyShared, string>>>;
  /** No large drink, bladder emptied, rested, contact checked, not ill, no change of medication: all of every row. */
  readonly standard: boolean;
}

export const isEmptyStudyRow = (row: StudyRow): boolean =>
  [...STUDY_COLUMNS, ...STUDY_EXPORTED_COLUMNS].every(
    // A new row holds the day and the device of the one above it before anything is typed.
    (column) => ['visit_date', 'operator', 'device_id'].includes(column) || (row[column] ?? '').trim() === '',
  );

/** What a row is filled with below another: the day, who measured and on what. */
export const rowBelow = (row: StudyRow | undefined): StudyRow => ({
  ...(row?.visit_date === undefined ? {} : { visit_date: row.visit_date }),
  ...(row?.operator === undefined ? {} : { operator: row.operator }),
  ...(row?.device_id === undefined ? {} : { device_id: row.device_id }),
});

/** A study sheet as a file that any import takes, and the hash by which it is known once it is kept. */
export interface StudyFile {
  readonly file: GivenFile;
  readonly sha256: string;
  readonly rows: number;
}

/**
 * The typed rows as a canonical visit export of purpose `precision`, cells as they were typed: what is wrong with them
 * the import says. Columns that no row fills are left out, empty rows too.
 */
export const studyFileOf = async ({ rows, shared, standard }: StudySheetDraft, today: string): Promise<StudyFile> => {
  const filled = rows.filter((row) => !isEmptyStudyRow(row));
  const lines = filled.map((row): Readonly<Record<string, string>> => ({
    ...row,
    visit_purpose: 'precision',
    ...shared,
    ...(standard ? STANDARD : {}),
  }));
  const columns = [
    ...STUDY_COLUMNS,
    'visit_purpose',
    ...STUDY_SHARED_COLUMNS,
    ...Object.keys(STANDARD),
    ...STUDY_EXPORTED_COLUMNS,
  ].filter(
    (column) =>
      column === 'client_id' || column === 'visit_date' || lines.some((line) => (line[column] ?? '').trim() !== ''),
  );
  const text = tableCsv(
    columns.map((title) => ({ title })),
    lines.map((line) => columns.map((column) => (line[column] ?? '').trim())),
  );
  const bytes = new TextEncoder().encode(text);
  return {
    file: { name: `study-readings-${today}.csv`, blob: new Blob([bytes], { type: 'text/csv' }) },
    sha256: await sha256(bytes),
    rows: filled.length,
  };
};
