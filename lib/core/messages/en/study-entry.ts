import type { Formatters } from '../../formatters';

/** Words of the form for readings of the error study that were written down by hand. */
export const studyEntry = (f: Formatters) => ({
  title: 'Readings of the study by hand',
  lead: 'What was written on the study sheet, one reading a row. The rows become a visit export of purpose precision and go through Import like any file: every row is judged, what is not accepted is reported, and undo takes all of it back.',
  intoOwn:
    'The demo clinic takes no import: from here the readings begin a clinic of your own, or go into one that you choose.',
  shared: 'True of every row',
  sharedNote:
    'Only days under the same conditions count between days. What stays empty here is unknown, and a pair with an unknown condition is not comparable where this clinic records it elsewhere.',
  columns: {
    client_id: 'Client',
    visit_date: 'Date',
    operator: 'Operator',
    device_id: 'Device',
    reading: 'Reading',
    height_cm: 'Height (cm)',
    weight_kg: 'Weight (kg)',
    r_ohm: 'R (Ω)',
    xc_ohm: 'Xc (Ω)',
    ffm_kg: 'Fat-free mass (kg)',
    fm_kg: 'Fat mass (kg)',
    smm_kg: 'Muscle (kg)',
    phase_angle_deg: 'Phase angle (°)',
    site: 'Site',
    device_software: 'Device software',
    electrode_path: 'Electrode path',
    posture: 'Posture',
    electrode_position: 'Electrode position',
    fasted_h: 'Fasted (h)',
    since_exercise_h: 'Since exercise (h)',
    since_alcohol_h: 'Since alcohol (h)',
  },
  postures: { unknown: 'not recorded', lying: 'lying', standing: 'standing' },
  standard: 'No large drink, bladder emptied, rested, contact checked, not ill, no change of medication',
  exported: 'Values that the device computed itself',
  table: 'Readings',
  cell: (p: { column: string; row: number }) => `${p.column}, row ${f.number(p.row)}`,
  remove: (p: { row: number }) => `Remove row ${f.number(p.row)}`,
  removeSign: '×',
  keys: 'Enter goes to the next row and adds one at the end, with the day, the operator and the device of the row above. A reading without a number is numbered in the order of the rows.',
  addRow: 'Add a row',
  check: (p: { rows: number }) => `Check ${f.plural(p.rows, '# reading', '# readings')} in Import`,
  clear: 'Empty the table',
  kept: (p: { rows: number }) =>
    `${f.plural(p.rows, '# reading is', '# readings are')} imported; the table is empty again.`,
  waiting:
    'These rows were given to Import and are not kept yet. They stay here, in this tab, until they are: correct them and check them again.',
  unsaved: 'Rows that are not imported stay in this tab alone.',
});
