const CONDITIONS = [
  'fasted_h',
  'since_exercise_h',
  'since_alcohol_h',
  'large_drink',
  'bladder_emptied',
  'rested',
  'contact_ok',
  'acute_illness',
  'medication_changed',
] as const;
const MET = ['12', '24', '48', 'n', 'y', 'y', 'y', 'n', 'n'] as const;

const COLUMNS = [
  'client_id',
  'sex',
  'birth_date',
  'program',
  'program_start',
  'visit_date',
  'visit_purpose',
  'device_id',
  'height_cm',
  'weight_kg',
  'frequency_khz',
  'side',
  'electrode_path',
  'posture',
  'r_ohm',
  'xc_ohm',
  'electrode_position',
] as const;

export interface VisitExportOptions {
  readonly clients?: number;
  readonly conditions?: boolean;
  /** Rows added as they are, in the columns' order. */
  readonly extra?: readonly string[];
}

/** A number between −1 and 1 that depends on its place alone: the same file every time. */
const wave = (place: number): number => Math.sin(place * 12.9898) * Math.cos(place * 4.1414);

/** The header line of a generated export. */
export const exportColumns = (conditions = true): readonly string[] =>
  conditions ? [...COLUMNS, ...CONDITIONS] : COLUMNS;

const dateOf = (client: number, day: number): string =>
  new Date(Date.UTC(2025, 0, 6 + (client % 20) + day)).toISOString().slice(0, 10);

/** One row; `change` overrides cells by their column. */
export const exportRow = (
  client: number,
  day: number,
  change: Readonly<Record<string, string>> = {},
  conditions = true,
): string => {
  const male = client % 2 === 0;
  const drift = day < 10 ? 0 : (client % 3) - 1;
  const place = client * 1000 + day;
  const cells: Readonly<Record<string, string>> = {
    client_id: `TC-${String(client).padStart(3, '0')}`,
    sex: male ? 'M' : 'F',
    birth_date: `${1950 + (client % 30)}-05-${String(10 + (client % 15))}`,
    program: client % 3 === 0 ? 'Check-ups only' : 'Walking group',
    program_start: dateOf(client, 0),
    visit_date: dateOf(client, day),
    visit_purpose: 'routine',
    device_id: 'D1',
    height_cm: String(male ? 176 + (client % 7) : 163 + (client % 7)),
    weight_kg: ((male ? 80 : 67) + (client % 9) + drift * 2 + wave(place) * 0.4).toFixed(1),
    frequency_khz: '50',
    side: 'right',
    electrode_path: 'hand-to-foot',
    posture: 'standing',
    r_ohm: ((male ? 480 : 570) + (client % 11) * 6 - drift * 25 + wave(place + 1) * 6).toFixed(1),
    xc_ohm: ((male ? 52 : 55) + (client % 5) + wave(place + 2)).toFixed(1),
    electrode_position: 'A',
    ...Object.fromEntries(CONDITIONS.map((name, index) => [name, MET[index] ?? ''])),
    ...change,
  };
  return exportColumns(conditions)
    .map((name) => quoted(cells[name] ?? ''))
    .join(',');
};

const quoted = (cell: string): string => (/[",\n\r]/.test(cell) ? `"${cell.replace(/"/g, '""')}"` : cell);

/** A small invented clinic as a visit export: baseline, two later visits, and a second day for the error study. */
export const visitExport = ({ clients = 36, conditions = true, extra = [] }: VisitExportOptions = {}): string => {
  const rows = Array.from({ length: clients }, (_, index) => index + 1).flatMap((client) => [
    exportRow(client, 0, {}, conditions),
    exportRow(client, 3, { visit_purpose: 'precision' }, conditions),
    exportRow(client, 5, { visit_purpose: 'precision' }, conditions),
    exportRow(client, 84, {}, conditions),
    exportRow(client, 168, {}, conditions),
  ]);
  return [exportColumns(conditions).join(','), ...rows, ...extra].join('\n') + '\n';
};
