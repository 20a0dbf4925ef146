/** The columns of the export, in order: those of the visit export that the demo clinic fills, and one of its own (`room`). */
export const COLUMNS = [
  'client_id',
  'family_name',
  'given_name',
  'birth_date',
  'sex',
  'ethnic_group',
  'program',
  'program_start',
  'program_end',
  'end_reason',
  'weight_change_intended',
  'visit_date',
  'visit_time',
  'visit_purpose',
  'reading',
  'site',
  'operator',
  'room',
  'device_id',
  'device_software',
  'height_cm',
  'height_source',
  'weight_kg',
  'weight_source',
  'waist_cm',
  'frequency_khz',
  'side',
  'electrode_path',
  'posture',
  'r_ohm',
  'xc_ohm',
  'electrode_position',
  'fasted_h',
  'since_exercise_h',
  'since_alcohol_h',
  'large_drink',
  'bladder_emptied',
  'rested',
  'contact_ok',
  'acute_illness',
  'oedema',
  'medication_changed',
  'menstrual_phase',
  'implanted_device',
  'pregnant',
  'weeks_after_birth',
  'dialysis',
  'hours_since_dialysis',
  'pal',
  'ffm_kg',
  'research_consent',
  'note',
] as const;

export type Column = (typeof COLUMNS)[number];

/** One reading as text; empty means unknown. */
export type VisitRow = Readonly<Record<Column, string>>;

/** A row and where it stands in the file: the day and time it was really taken, whatever was typed. */
export interface PlacedRow {
  readonly row: VisitRow;
  readonly day: number;
  /** The client as one person, whatever spelling the row has. */
  readonly person: string;
}

const EMPTY_ROW = Object.fromEntries(COLUMNS.map((column) => [column, ''])) as Record<Column, string>;

/** A row in which everything not given is empty. */
export const visitRow = (cells: Partial<VisitRow>): VisitRow => ({ ...EMPTY_ROW, ...cells });

/** What every row of this clinic says in the same words. */
export const FIXED_CELLS: Partial<VisitRow> = {
  height_source: 'measured',
  weight_source: 'measured',
  frequency_khz: '50',
  side: 'right',
  electrode_path: 'hand-to-foot',
  posture: 'standing',
};
