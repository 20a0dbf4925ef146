import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Settings } from '../../lib/cohort/settings';
import { openNodeEngine } from '../../lib/engine/node';
import type { Engine } from '../../lib/engine/types';
import type { CohortFilter } from '../../lib/cohort/types/filter';
import { cohortOf, filterFor, latestOf, pairsOf, reading, without, type Cells } from './small-clinic';

let engine: Engine;
beforeAll(async () => {
  engine = await openNodeEngine();
});
afterAll(() => engine.close());

const START = '2025-01-06';
const LATER = '2025-05-06';

/** Somebody whose conditions are recorded in both months, so that an empty cell beside theirs is unknown. */
const WITNESS = [reading('witness', START), reading('witness', LATER)];

type Graded = readonly [comparable: string, reasons: readonly string[]];

const graded = async (
  from: Cells,
  to: Cells,
  settings: Partial<Settings> = {},
  measure: CohortFilter['measure'] = 'ffm',
): Promise<Graded> => {
  const cohort = await cohortOf(
    engine,
    [{ ...reading('a', START), ...from }, { ...reading('a', LATER), ...to }, ...WITNESS],
    settings,
  );
  const row = await latestOf(cohort, 'a', measure);
  return [row.comparable, row.reasons.filter((reason) => reason !== 'no_error_study')];
};

test('two standard visits are comparable', async () => {
  expect(await graded({}, {})).toEqual(['comparable', []]);
});

describe('a condition that spoils a reading grades the pair at one end, at the other and at both', () => {
  test.each([
    ['fasting', 'no', { fasted_h: 7.9 }, { fasted_h: 8 }],
    ['contact', 'no', { contact_ok: 'n' }, { contact_ok: 'y' }],
    ['exercise', 'caution', { since_exercise_h: 11 }, { since_exercise_h: 12 }],
    ['alcohol', 'caution', { since_alcohol_h: 11.5 }, { since_alcohol_h: 12 }],
    ['large_drink', 'caution', { large_drink: 'y' }, { large_drink: 'n' }],
    ['bladder', 'caution', { bladder_emptied: 'n' }, { bladder_emptied: 'y' }],
    ['rested', 'caution', { rested: 'n' }, { rested: 'y' }],
    ['acute_illness', 'caution', { acute_illness: 'y' }, { acute_illness: 'n' }],
    ['medication', 'caution', { medication_changed: 'y' }, { medication_changed: 'n' }],
  ] as const)('%s: %s', async (rule, grade, broken, met) => {
    expect(await graded(broken, met)).toEqual([grade, [rule]]);
    expect(await graded(met, broken)).toEqual([grade, [rule]]);
    expect(await graded(broken, broken)).toEqual([grade, [rule]]);
    expect(await graded(met, met)).toEqual(['comparable', []]);
  });
});

describe('a label that must not change grades the pair when it does, and not when both differ from the usual', () => {
  test.each([
    ['device', 'no', 'device_id', 'Unit 2'],
    ['electrode_path', 'no', 'electrode_path', 'foot-to-foot'],
    ['posture', 'no', 'posture', 'standing'],
    ['side', 'no', 'side', 'left'],
    ['frequency', 'no', 'frequency_khz', 100],
    ['position', 'no', 'electrode_position', 'B'],
  ] as const)('%s', async (rule, grade, column, other) => {
    expect(await graded({ [column]: other }, {}, {}, 'r')).toEqual([grade, [rule]]);
    expect(await graded({}, { [column]: other }, {}, 'r')).toEqual([grade, [rule]]);
    expect(await graded({ [column]: other }, { [column]: other }, {}, 'r')).toEqual(['comparable', []]);
  });

  test.each([
    ['menstrual_phase', { menstrual_phase: 'none', sex: 'F' }, { menstrual_phase: 'premenstrual', sex: 'F' }],
    ['height_source', { height_source: 'measured' }, { height_source: 'reported' }],
    ['weight_source', { weight_source: 'measured' }, { weight_source: 'entered' }],
  ] as const)('%s: a caution, and nothing where one end is empty', async (rule, one, other) => {
    expect(await graded(one, other)).toEqual(['caution', [rule]]);
    expect(await graded(one, one)).toEqual(['comparable', []]);
    expect(await graded(one, without(one, rule))).toEqual(['comparable', []]);
  });

  test('device software matters for what the device computed, phase angle included, and for nothing else', async () => {
    const [one, other] = [{ device_software: '1.0' }, { device_software: '2.0' }];
    const exported = { ffm_kg: '55.0', tbw_l: '40.0', phase_angle_deg: '5.5' };
    for (const measure of ['ffm_exported', 'tbw_exported', 'phase_angle_exported'] as const) {
      expect(await graded({ ...exported, ...one }, { ...exported, ...other }, {}, measure)).toEqual([
        'no',
        ['software'],
      ]);
      expect(await graded({ ...exported, ...one }, { ...exported, ...one }, {}, measure)).toEqual(['comparable', []]);
    }
    for (const measure of ['ffm', 'phase_angle', 'weight'] as const) {
      expect(await graded(one, other, {}, measure)).toEqual(['comparable', []]);
    }
  });
});

describe('recorded heights of an adult', () => {
  test('may differ by 1.5 cm and not by more', async () => {
    expect(await graded({ height_cm: '176.0' }, { height_cm: '177.5' })).toEqual(['comparable', []]);
    expect(await graded({ height_cm: '176.0' }, { height_cm: '177.6' })).toEqual(['caution', ['height_differs']]);
  });
});

describe('dialysis', () => {
  const haemo = (hours: number | ''): Cells => ({ dialysis: 'haemo', hours_since_dialysis: hours });

  test.each([
    ['the same time after a session', haemo(4), haemo(4), 'comparable'],
    ['one hour apart', haemo(4), haemo(5), 'comparable'],
    ['more than one hour apart', haemo(4), haemo(5.1), 'no'],
    ['unknown at one visit', haemo(4), haemo(''), 'no'],
    ['unknown at both', haemo(''), haemo(''), 'no'],
    ['only at the later visit', {}, haemo(4), 'no'],
    ['peritoneal', { dialysis: 'peritoneal' }, { dialysis: 'peritoneal' }, 'no'],
    ['none', { dialysis: 'none' }, { dialysis: 'none' }, 'comparable'],
  ] as const)('vectors are compared only at the same time after a session: %s', async (_when, from, to, comparable) => {
    expect(await graded(from, to, {}, 'r_h')).toEqual([comparable, comparable === 'no' ? ['dialysis_timing'] : []]);
  });
});

describe('a condition that is empty', () => {
  const columns = [
    ['fasting', 'fasted_h'],
    ['exercise', 'since_exercise_h'],
    ['alcohol', 'since_alcohol_h'],
    ['large_drink', 'large_drink'],
    ['bladder', 'bladder_emptied'],
    ['rested', 'rested'],
    ['contact', 'contact_ok'],
    ['acute_illness', 'acute_illness'],
    ['medication', 'medication_changed'],
    ['device', 'device_id'],
    ['position', 'electrode_position'],
    ['posture', 'posture'],
  ] as const;

  test.each(columns)(
    '%s: unknown, a caution, where others record it at that site in that month',
    async (rule, column) => {
      expect(await graded({ [column]: '' }, {}, {}, 'r')).toEqual(['caution', [`unknown_${rule}`]]);
      expect(await graded({}, { [column]: '' }, {}, 'r')).toEqual(['caution', [`unknown_${rule}`]]);
    },
  );

  test.each(columns)('%s: not recorded here, and grades nothing, where nobody does', async (_rule, column) => {
    const rows = [reading('a', START), reading('a', LATER), ...WITNESS].map((row) => without(row, column));
    const row = await latestOf(await cohortOf(engine, rows), 'a', 'r');
    expect([row.comparable, row.reasons]).toEqual(['comparable', ['no_error_study']]);
  });

  test('is looked at per site and calendar month', async () => {
    const bare = without(reading('a', '2025-05-31'), 'rested');
    const other = [reading('b', '2025-05-01', { site: 'South' }), reading('b', '2025-06-01')];
    const alone = await cohortOf(engine, [reading('a', START), bare, ...other]);
    expect((await latestOf(alone, 'a', 'ffm')).comparable).toBe('comparable');
    const beside = await cohortOf(engine, [reading('a', START), bare, reading('b', '2025-05-01'), ...other]);
    expect((await latestOf(beside, 'a', 'ffm')).comparable).toBe('caution');
  });

  test('in one of two readings leaves the visit unknown, and a broken reading breaks it', async () => {
    const twice = async (cells: Cells): Promise<Graded> => {
      const rows = [
        { ...reading('a', START), reading: 1 },
        { ...reading('a', START), reading: 2, ...cells },
        reading('a', LATER),
        ...WITNESS,
      ];
      const row = await latestOf(await cohortOf(engine, rows), 'a', 'ffm');
      return [row.comparable, row.reasons];
    };
    expect(await twice({ rested: '' })).toEqual(['caution', ['unknown_rested', 'no_error_study']]);
    expect(await twice({ rested: 'n' })).toEqual(['caution', ['rested', 'no_error_study']]);
    expect(await twice({ electrode_position: 'B' })).toEqual(['caution', ['unknown_position', 'no_error_study']]);
  });

  test('of body-water cautions is no reason: oedema or pregnancy that nobody recorded grades nothing', async () => {
    expect(await graded({ oedema: 'n', pregnant: 'n' }, { oedema: '', pregnant: '' })).toEqual(['comparable', []]);
  });
});

describe('a written procedure', () => {
  const procedure = (more: Partial<Settings['procedures'][number]> = {}): Partial<Settings> => ({
    procedures: [{ site: 'North', from: null, to: null, conditions: ['fasting', 'rested'], initials: 'AB', ...more }],
  });

  test('stands for what is empty: by procedure, counted as comparable', async () => {
    expect(await graded({ fasted_h: '' }, {}, procedure())).toEqual(['by-procedure', []]);
    expect(await graded({ fasted_h: '', rested: '' }, { fasted_h: '' }, procedure())).toEqual(['by-procedure', []]);
    const rows = [reading('a', START), reading('a', LATER, { fasted_h: '' })];
    const cohort = await cohortOf(engine, [...rows, ...WITNESS], procedure());
    expect((await latestOf(cohort, 'a', 'ffm')).admitted).toBe(true);
    expect(cohort.summary.pairsBySetting).toEqual({ strict: 2, caution: 2, all: 2 });
  });

  test('stands also where nobody records the condition', async () => {
    const rows = [reading('a', START), reading('a', LATER)].map((row) => without(row, 'fasted_h'));
    const cohort = await cohortOf(engine, rows, procedure());
    expect((await latestOf(cohort, 'a', 'ffm')).comparable).toBe('by-procedure');
    expect(cohort.summary.coverage.find((entry) => entry.rule === 'fasting')).toEqual({
      rule: 'fasting',
      recorded: 0,
      byProcedure: 2,
      unknown: 0,
      notRecorded: 0,
    });
  });

  test('stands for no other condition, no other site and no other time', async () => {
    const empty = { fasted_h: '' };
    expect((await graded({ ...empty, bladder_emptied: '' }, {}, procedure()))[1]).toEqual(['unknown_bladder']);
    expect((await graded(empty, {}, procedure({ site: 'South' })))[1]).toEqual(['unknown_fasting']);
    expect((await graded(empty, {}, procedure({ from: '2025-01-07' })))[1]).toEqual(['unknown_fasting']);
    expect((await graded(empty, {}, procedure({ to: '2025-01-05' })))[1]).toEqual(['unknown_fasting']);
    expect((await graded(empty, {}, procedure({ from: '2025-01-06', to: '2025-01-06' })))[0]).toBe('by-procedure');
    expect((await graded(empty, {}, procedure({ site: null })))[0]).toBe('by-procedure');
  });

  test('does not outweigh a recorded no', async () => {
    expect(await graded({ fasted_h: 2 }, { fasted_h: '' }, procedure())).toEqual(['no', ['fasting']]);
    expect(await graded({ rested: 'n' }, { rested: '' }, procedure())).toEqual(['caution', ['rested']]);
  });
});

describe('the clinic’s own rules', () => {
  const rules = (rule: Settings['rules'][number]): Partial<Settings> => ({ rules: [rule] });

  test('give another grade: off and note say nothing against a pair', async () => {
    const fed = { fasted_h: 2 };
    expect(await graded(fed, {}, rules({ id: 'fasting', grade: 'caution' }))).toEqual(['caution', ['fasting']]);
    expect(await graded(fed, {}, rules({ id: 'fasting', grade: 'off' }))).toEqual(['comparable', []]);
    expect((await graded(fed, {}, rules({ id: 'fasting', grade: 'note' })))[0]).toBe('comparable');
    expect(await graded({ rested: 'n' }, {}, rules({ id: 'rested', grade: 'no' }))).toEqual(['no', ['rested']]);
    expect(await graded({ rested: '' }, {}, rules({ id: 'rested', grade: 'off' }))).toEqual(['comparable', []]);
  });

  test('move a limit and leave the grade', async () => {
    expect(await graded({ fasted_h: 5 }, {}, rules({ id: 'fasting', limit: 4 }))).toEqual(['comparable', []]);
    expect(await graded({ fasted_h: 5 }, {}, rules({ id: 'fasting', limit: 5.5 }))).toEqual(['no', ['fasting']]);
    expect(await graded({ height_cm: '170.0' }, {}, rules({ id: 'height_differs', limit: 10 }))).toEqual([
      'comparable',
      [],
    ]);
  });
});

describe('the setting of who takes part', () => {
  const rows = [
    ...WITNESS,
    ...[{}, { rested: 'n' }, { fasted_h: 2 }].flatMap((cells, index) => [
      reading(`c${String(index)}`, START),
      reading(`c${String(index)}`, LATER, { ...cells, weight_kg: (81 + index).toFixed(1) }),
    ]),
  ];

  test('strict takes comparable pairs, caution those with a caution too, all every pair; the counts say so', async () => {
    const cohort = await cohortOf(engine, rows);
    const taken = async (comparable: CohortFilter['comparable']) => {
      const [row] = await cohort.programs(filterFor('weight', { comparable }), 'baseline-latest');
      return [row?.nPairs, row?.nComparable, row?.cannotCompare, row?.mean];
    };
    expect(await taken('strict')).toEqual([4, 2, 2, 0.5]);
    expect(await taken('caution')).toEqual([4, 3, 1, 1]);
    expect(await taken('all')).toEqual([4, 4, 0, 1.5]);
    expect(cohort.summary.pairsBySetting).toEqual({ strict: 2, caution: 3, all: 4 });
    expect(cohort.summary.openingSetting).toBe('strict');
  });

  test('opens on the strictest that holds pairs, unless the clinic chose one', async () => {
    const cautious = [reading('a', START), reading('a', LATER, { rested: 'n' })];
    expect((await cohortOf(engine, cautious)).summary.openingSetting).toBe('caution');
    const incomparable = [reading('a', START), reading('a', LATER, { fasted_h: 2 })];
    expect((await cohortOf(engine, incomparable)).summary.openingSetting).toBe('all');
    expect((await cohortOf(engine, incomparable, { comparable: 'strict' })).summary.openingSetting).toBe('strict');
  });

  test('does not change what a pair is, only whether it gives a result', async () => {
    const cohort = await cohortOf(engine, rows);
    for (const comparable of ['strict', 'caution', 'all'] as const) {
      const [row] = await pairsOf(cohort, 'c2', 'weight', 'baseline-latest', { comparable });
      expect(row).toMatchObject({ comparable: 'no', result: comparable === 'all' ? 'no-threshold' : 'cannot-compare' });
    }
  });
});
