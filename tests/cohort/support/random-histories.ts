import fc from 'fast-check';
import { settingsSchema, type Settings } from '../../../lib/cohort/settings';
import { DEFAULT_RULES } from '../../../lib/measures/default-rules';
import { errorStudy, type Cells } from '../small-clinic';

/** A yes that is rarer than a no, and now and then nothing: what a record looks like. */
const flag = (spoiled: 'y' | 'n') =>
  fc.oneof(
    { weight: 30, arbitrary: fc.constant(spoiled === 'y' ? 'n' : 'y') },
    { weight: 1, arbitrary: fc.constant(spoiled) },
    { weight: 1, arbitrary: fc.constant('') },
  );

const mostly = <T extends string | number | null>(usual: T, ...others: readonly T[]) =>
  fc.oneof(
    { weight: 60, arbitrary: fc.constant(usual) },
    ...others.map((other) => ({ weight: 1, arbitrary: fc.constant(other) })),
  );

const hours = (limit: number) => mostly<string | number>(limit + 3, limit, limit - 0.1, limit - 5, '');

const tenths = (from: number, to: number) => fc.integer({ min: from * 10, max: to * 10 });

/** What one visit was measured under; each of its readings may differ in one cell. */
const circumstances = fc.record({
  visit_purpose: mostly('routine', '', 'repeat', 'crosscheck'),
  device_id: mostly('Unit 1', 'Unit 2', ''),
  device_software: mostly('1.0', '2.0', ''),
  electrode_path: mostly('hand-to-foot', 'foot-to-foot', ''),
  posture: mostly('lying', 'standing', ''),
  side: mostly('right', 'left', ''),
  frequency_khz: mostly<string | number>(50, 100, ''),
  electrode_position: mostly('A', 'B', ''),
  height_cm: mostly('172.0', '173.5', '173.6', ''),
  height_source: mostly('measured', 'reported', ''),
  weight_source: mostly('measured', 'entered', ''),
  menstrual_phase: mostly('', 'none', 'other'),
  fasted_h: hours(8),
  since_exercise_h: hours(12),
  since_alcohol_h: hours(12),
  large_drink: flag('y'),
  bladder_emptied: flag('n'),
  rested: flag('n'),
  contact_ok: flag('n'),
  acute_illness: flag('y'),
  medication_changed: flag('y'),
  oedema: mostly('', 'n', 'y'),
  pregnant: mostly('', 'y'),
  dialysis: mostly('', 'none', 'haemo'),
  hours_since_dialysis: mostly<string | number>(4, 5, 5.1, ''),
});

/** What a visit measures, in tenths; heavy and light people among them. */
const level = fc.record({
  weight_kg: fc.oneof({ weight: 9, arbitrary: tenths(68, 76) }, { weight: 1, arbitrary: tenths(40, 110) }),
  r_ohm: tenths(485, 515),
  ffm_kg: tenths(40, 65),
});

/** What a reading adds to its visit's level, in tenths; null where it holds no such figure. */
const figures = fc.record({
  weight_kg: mostly<number | null>(0, 1, 2, 4, null),
  r_ohm: mostly<number | null>(0, 8, 15, 31, null),
  ffm_kg: mostly<number | null>(0, 3, 9, null),
});

const visit = fc.record({
  month: fc.integer({ min: 1, max: 6 }),
  day: fc.integer({ min: 1, max: 28 }),
  cells: circumstances,
  level,
  readings: fc.array(figures, { minLength: 1, maxLength: 2 }),
  /** What the second reading has otherwise. */
  slip: mostly('', 'rested', 'electrode_position', 'posture', 'fasted_h'),
});

const client = fc.record({
  sex: fc.constantFrom('F', 'M', ''),
  birth: mostly('1960-05-05', '2009-03-10', ''),
  program: mostly('Walking', 'Diet', ''),
  start: fc.constantFrom('', '2025-02-10', '2025-03-01'),
  end: mostly('', '2025-05-20'),
  visits: fc.array(visit, { minLength: 1, maxLength: 5 }),
});

/** A random small cohort: one or two sites, each of which never records some conditions. */
export const cohorts = fc.record({
  clients: fc.array(client, { minLength: 1, maxLength: 4 }),
  silent: fc.subarray(
    ['fasted_h', 'rested', 'contact_ok', 'posture', 'electrode_position', 'since_alcohol_h', 'device_id'],
    { maxLength: 3 },
  ),
  secondSite: fc.boolean(),
});

export type RandomCohort = typeof cohorts extends fc.Arbitrary<infer T> ? T : never;

const figure = (level: number, added: number | null, index: number): string =>
  added === null ? '' : ((level + added + 3 * index) / 10).toFixed(1);

type RandomVisit = RandomCohort['clients'][number]['visits'][number];

const readingsOf = ({ month, day, cells, level: at, readings, slip }: RandomVisit): readonly Cells[] =>
  readings.map((one, index) => ({
    visit_date: `2025-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`,
    ...cells,
    ...(index === 1 && slip !== '' ? { [slip]: slip === 'electrode_position' ? 'C' : '' } : {}),
    reading: index + 1,
    weight_kg: figure(at.weight_kg, one.weight_kg, index),
    r_ohm: figure(at.r_ohm, one.r_ohm, index),
    ffm_kg: figure(at.ffm_kg, one.ffm_kg, index),
    xc_ohm: '50.0',
  }));

/** One visit a day, so that a day's rows are readings of one visit and never ask whether one came twice. */
const daysApart = (visits: readonly RandomVisit[]): readonly RandomVisit[] => [
  ...new Map(visits.map((one) => [`${String(one.month)} ${String(one.day)}`, one])).values(),
];

/** The rows of a cohort as a visit export. */
export const rowsOf = ({ clients, silent, secondSite }: RandomCohort, place: number): readonly Cells[] =>
  clients.flatMap((person, index) =>
    daysApart(person.visits).flatMap((one, nth) =>
      readingsOf(one).map((row) => ({
        ...row,
        client_id: `P${String(place * 10 + index).padStart(5, '0')}`,
        site: secondSite && nth % 2 === 1 ? `S${String(place)} b` : `S${String(place)}`,
        sex: person.sex,
        birth_date: person.birth,
        program: person.program,
        program_start: person.program === '' ? '' : person.start,
        program_end: person.program === '' ? '' : person.end,
        ...Object.fromEntries(silent.map((column) => [column, ''])),
      })),
    ),
  );

const rule = fc.record(
  {
    id: fc.constantFrom(...DEFAULT_RULES.map(({ id }) => id)),
    grade: fc.constantFrom('no', 'caution', 'note', 'off'),
    limit: fc.constantFrom(1, 2, 7.9, 8, 10.9, 11, 12),
  },
  { requiredKeys: ['id'] },
);

const procedure = fc.record({
  site: fc.constantFrom(null, null, 'S3', 'S17', 'S31'),
  from: fc.constantFrom(null, '2025-02-15'),
  to: fc.constantFrom(null, '2025-05-10'),
  conditions: fc.subarray(['fasting', 'rested', 'bladder', 'alcohol', 'contact'] as const, { minLength: 1 }),
  initials: fc.constant('AB'),
});

/** Random settings: rules edited, procedures declared, an error of the exported value entered or not. */
export const randomSettings: fc.Arbitrary<Settings> = fc
  .record({
    rules: fc.uniqueArray(rule, { maxLength: 4, selector: ({ id }) => id }),
    procedures: fc.array(procedure, { minLength: 1, maxLength: 3 }),
    errorSource: fc.constantFrom(
      { kind: 'own' as const },
      { kind: 'entered' as const, values: [{ measure: 'ffm_exported' as const, betweenDaySd: 9, df: 40 }] },
    ),
  })
  .map((chosen) => settingsSchema.parse(chosen));

/** 31 people measured twice a day on two days of a week: an own error of weight and resistance. */
export const STUDY: readonly Cells[] = errorStudy(31, (person, day) => ({
  weight_kg: (80 + (day === 0 ? 0 : (person % 5) - 2)).toFixed(1),
  r_ohm: (500 + (day === 0 ? 0 : 4 * ((person % 7) - 3))).toFixed(1),
  site: 'Study',
  reading: 1,
})).flatMap((row, index) => [
  row,
  {
    ...row,
    reading: 2,
    weight_kg: (Number(row['weight_kg']) + 0.1 + (index % 3) / 10).toFixed(1),
    r_ohm: (Number(row['r_ohm']) + 1 + (index % 4)).toFixed(1),
  },
]);
