import type { Column, ColumnRole, Limits } from './column';

const text = (role: ColumnRole, name: string, notes = ''): Column => ({ name, type: 'text', role, notes });
const flag = (role: ColumnRole, name: string, notes = ''): Column => ({ name, type: 'flag', role, notes });
const date = (role: ColumnRole, name: string, notes = ''): Column => ({ name, type: 'date', role, notes });

const number = (role: ColumnRole, name: string, unit: string, notes = '', limits?: Limits): Column => ({
  name,
  type: 'number',
  unit,
  role,
  notes,
  ...(limits === undefined ? {} : { limits }),
});

const choice = (role: ColumnRole, name: string, choices: readonly string[], notes = '', lenient = false): Column => ({
  name,
  type: 'choice',
  choices,
  role,
  lenient,
  notes,
});

const EXPORTED_KG: Limits = { ask: [0.1, 400] };
const EXPORTED_LITRES: Limits = { ask: [0.1, 300] };
const SOURCES = ['measured', 'entered', 'reported'];

/**
 * The columns of the visit export, in their order: one row is one reading. This list is the source of the schema, the
 * verdict SQL and the tables of the documentation. Only R, Xc, height and weight are refused at or below zero. Warning limits of R and Xc: range seen in 13,276 people of the
 * 1999–2004 US survey at 50 kHz; the other limits are common practice, no source.
 */
export const COLUMNS: readonly Column[] = [
  text('identity', 'client_id', 'one person, one id; required'),
  text('identity', 'family_name', 'shown only where identities are shown'),
  text('identity', 'given_name', 'shown only where identities are shown'),
  date('identity', 'birth_date', 'the best of birth_date, birth_year and age_years is used'),
  { name: 'birth_year', type: 'integer', role: 'identity', limits: { ask: [1900, 2100] }, notes: 'four digits' },
  number('identity', 'age_years', 'a', '', { warn: [5, 105] }),
  choice('identity', 'sex', ['F', 'M', 'X'], 'as recorded', true),
  choice('identity', 'sex_for_equations', ['F', 'M'], 'one coding per series; default: sex where it is F or M', true),
  text('identity', 'ethnic_group', 'self-described; never an input or a ranking by default; out of exports by default'),
  text('enrolment', 'program', 'one program a row'),
  date('enrolment', 'program_start'),
  date('enrolment', 'program_end'),
  text('enrolment', 'end_reason', 'finished, moved, declined, medical, operated, died, other'),
  flag('enrolment', 'weight_change_intended', 'per client and program'),
  date('visit', 'visit_date', 'required'),
  { name: 'visit_time', type: 'time', role: 'visit', notes: '' },
  choice(
    'visit',
    'visit_purpose',
    ['routine', 'repeat', 'precision', 'crosscheck'],
    'precision: the error study between days; crosscheck: the device study; empty = routine',
  ),
  { name: 'reading', type: 'integer', role: 'visit', notes: 'replicates of one visit; empty = numbered in file order' },
  text('visit', 'site'),
  text('visit', 'operator'),
  text('visit', 'device_id'),
  text('visit', 'device_model'),
  text('visit', 'device_software'),
  number('body', 'height_cm', 'cm', '', { positive: true, ask: [50, 250], warn: [120, 205] }),
  choice('body', 'height_source', SOURCES),
  number('body', 'weight_kg', 'kg', '', { positive: true, ask: [2, 400], warn: [30, 230] }),
  choice('body', 'weight_source', SOURCES),
  text('body', 'clothing'),
  number('body', 'waist_cm', 'cm', 'midway between the lowest rib and the iliac crest', { ask: [30, 250] }),
  number('impedance', 'frequency_khz', 'kHz', 'empty = 50', { ask: [1, 1000] }),
  choice('impedance', 'side', ['right', 'left'], 'empty = right'),
  text('impedance', 'electrode_path', 'for example hand-to-foot; unknown if empty'),
  choice('impedance', 'posture', ['lying', 'standing'], 'unknown if empty'),
  number('impedance', 'r_ohm', 'Ohm', 'whole body', { positive: true, ask: [100, 1500], warn: [176, 985] }),
  number('impedance', 'xc_ohm', 'Ohm', 'whole body; above R is a question', {
    positive: true,
    ask: [5, 300],
    warn: [25, 195],
    rareAbove: 110,
  }),
  text('impedance', 'electrode_position', 'label of the pair of hand electrodes or of the electrode sites'),
  number('condition', 'fasted_h', 'h', 'hours'),
  number('condition', 'since_exercise_h', 'h', 'hours'),
  number('condition', 'since_alcohol_h', 'h', 'hours'),
  flag('condition', 'large_drink'),
  flag('condition', 'bladder_emptied'),
  flag('condition', 'rested'),
  flag('condition', 'contact_ok'),
  flag('condition', 'acute_illness'),
  flag('caution', 'oedema', 'stops composition'),
  flag('caution', 'fluid_medication'),
  flag('condition', 'medication_changed'),
  choice(
    'condition',
    'menstrual_phase',
    ['none', 'menstrual', 'premenstrual', 'other'],
    'optional; never printed, out of exports by default',
  ),
  flag('caution', 'implanted_device', 'out of exports by default'),
  flag('caution', 'pregnant', 'out of exports by default'),
  number('caution', 'weeks_after_birth', 'wk', 'out of exports by default'),
  flag('caution', 'amputation_or_limb_loss'),
  flag('caution', 'large_metal_implant'),
  flag('caution', 'one_sided_condition', 'paralysis or lymphoedema of one side'),
  choice(
    'caution',
    'fluid_condition',
    ['none', 'ascites', 'heart_failure', 'cirrhosis', 'infusion'],
    'stops composition as oedema does',
  ),
  choice('caution', 'dialysis', ['none', 'haemo', 'peritoneal']),
  number('caution', 'hours_since_dialysis', 'h', 'hours'),
  number('other', 'pal', '1', 'physical activity level, from an activity record where there is one'),
  number('exported', 'ffm_kg', 'kg', 'as exported: kept beside the computed value, never mixed', EXPORTED_KG),
  number('exported', 'fm_kg', 'kg', 'as exported', EXPORTED_KG),
  number('exported', 'smm_kg', 'kg', 'as exported', EXPORTED_KG),
  number('exported', 'tbw_l', 'L', 'as exported', EXPORTED_LITRES),
  number('exported', 'ecw_l', 'L', 'as exported', EXPORTED_LITRES),
  number('exported', 'phase_angle_deg', 'deg', 'as exported', { ask: [0, 90] }),
  number('other', 'arm_cm', 'cm', 'for geometry-corrected vectors'),
  number('other', 'calf_cm', 'cm', 'for geometry-corrected vectors'),
  number('other', 'handgrip_kg', 'kg'),
  number('other', 'chair_stand_s', 's'),
  number('other', 'gait_m_s', 'm/s'),
  flag('other', 'research_consent', 'empty = out of research exports'),
  text('other', 'note', 'local only, out of exports by default'),
  text('other', 'corrects_row', 'written by the report of rows not accepted: the row that this one replaces'),
];

/** The columns by name. */
export const COLUMN_BY_NAME: ReadonlyMap<string, Column> = new Map(COLUMNS.map((column) => [column.name, column]));

/** A row needs at least one of these. */
export const VALUE_COLUMNS: readonly string[] = COLUMNS.filter(
  (column) =>
    column.type === 'number' &&
    ['body', 'impedance', 'exported', 'other'].includes(column.role) &&
    !['frequency_khz', 'pal'].includes(column.name),
).map((column) => column.name);

/** The columns that a written procedure of the clinic can stand for. */
export const CONDITION_COLUMNS: readonly string[] = COLUMNS.filter(
  (column) => column.role === 'condition' && column.name !== 'menstrual_phase',
).map((column) => column.name);

/** The columns that a table of enrolments is judged for. */
export const ENROLMENT_COLUMNS: readonly Column[] = COLUMNS.filter(
  (column) => column.role === 'enrolment' || (column.role === 'identity' && column.name !== 'age_years'),
);

/** The columns with a device's own composition: what one reading is known by where it holds no R. */
export const EXPORTED_COLUMNS: readonly string[] = COLUMNS.filter((column) => column.role === 'exported').map(
  (column) => column.name,
);
