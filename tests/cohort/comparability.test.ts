import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Settings } from '../../lib/cohort/settings';
import { openNodeEngine } from '../../lib/engine/node';
import type { Engine } from '../../lib/engine/types';
import type { CohortFilter } from '../../lib/cohort/types/filter';
import { cohortOf, filterFor, latestOf, pairsOf, reading, sharedClinics, without, type Cells } from './small-clinic';

const clinics = sharedClinics();
let engine: Engine;
beforeAll(async () => {
  engine = await openNodeEngine();
  await clinics.build(engine);
});
afterAll(() => engine.close());

const START = '2025-01-06';
const LATER = '2025-05-06';

/** Somebody whose conditions are recorded in both months, so that an empty cell beside theirs is unknown. */
const WITNESS = [reading('witness', START), reading('witness', LATER)];

type Graded = readonly [comparable: string, reasons: readonly string[]];

/** The grade of a pair, asked while the tests are collected and read in a test. */
const graded = (
  from: Cells,
  to: Cells,
  settings: Partial<Settings> = {},
  measure: CohortFilter['measure'] = 'ffm',
): (() => Graded) => {
  const latest = clinics
    .add([{ ...reading('a', START), ...from }, { ...reading('a', LATER), ...to }, ...WITNESS], settings)
    .latest(measure);
  return () => {
    const row = latest();
    return [row.comparable, row.reasons.filter((reason) => reason !== 'no_error_study')];
  };
};

const standard = graded({}, {});
test('two standard visits are comparable', () => {
  expect(standard()).toEqual(['comparable', []]);
});

describe('a condition that spoils a reading grades the pair at one end, at the other and at both', () => {
  const conditions = [
    ['fasting', 'no', { fasted_h: 7.9 }, { fasted_h: 8 }],
    ['contact', 'no', { contact_ok: 'n' }, { contact_ok: 'y' }],
    ['exercise', 'caution', { since_exercise_h: 11 }, { since_exercise_h: 12 }],
    ['alcohol', 'caution', { since_alcohol_h: 11.5 }, { since_alcohol_h: 12 }],
    ['large_drink', 'caution', { large_drink: 'y' }, { large_drink: 'n' }],
    ['bladder', 'caution', { bladder_emptied: 'n' }, { bladder_emptied: 'y' }],
    ['rested', 'caution', { rested: 'n' }, { rested: 'y' }],
    ['acute_illness', 'caution', { acute_illness: 'y' }, { acute_illness: 'n' }],
    ['medication', 'caution', { medication_changed: 'y' }, { medication_changed: 'n' }],
  ] as const;

  for (const [rule, grade, broken, met] of conditions) {
    const [first, last, both, neither] = [
      graded(broken, met),
      graded(met, broken),
      graded(broken, broken),
      graded(met, met),
    ];
    test(`${rule}: ${grade}`, () => {
      expect(first()).toEqual([grade, [rule]]);
      expect(last()).toEqual([grade, [rule]]);
      expect(both()).toEqual([grade, [rule]]);
      expect(neither()).toEqual(['comparable', []]);
    });
  }
});

describe('a label that must not change grades the pair when it does, and not when both differ from the usual', () => {
  const labels = [
    ['device', 'no', 'device_id', 'Unit 2'],
    ['electrode_path', 'no', 'electrode_path', 'foot-to-foot'],
    ['posture', 'no', 'posture', 'standing'],
    ['side', 'no', 'side', 'left'],
    ['frequency', 'no', 'frequency_khz', 100],
    ['position', 'no', 'electrode_position', 'B'],
  ] as const;

  for (const [rule, grade, column, other] of labels) {
    const [first, last, both] = [
      graded({ [column]: other }, {}, {}, 'r'),
      graded({}, { [column]: other }, {}, 'r'),
      graded({ [column]: other }, { [column]: other }, {}, 'r'),
    ];
    test(rule, () => {
      expect(first()).toEqual([grade, [rule]]);
      expect(last()).toEqual([grade, [rule]]);
      expect(both()).toEqual(['comparable', []]);
    });
  }

  const sources = [
    ['menstrual_phase', { menstrual_phase: 'none', sex: 'F' }, { menstrual_phase: 'premenstrual', sex: 'F' }],
    ['height_source', { height_source: 'measured' }, { height_source: 'reported' }],
    ['weight_source', { weight_source: 'measured' }, { weight_source: 'entered' }],
  ] as const;

  for (const [rule, one, other] of sources) {
    const [changed, same, empty] = [graded(one, other), graded(one, one), graded(one, without(one, rule))];
    test(`${rule}: a caution, and nothing where one end is empty`, () => {
      expect(changed()).toEqual(['caution', [rule]]);
      expect(same()).toEqual(['comparable', []]);
      expect(empty()).toEqual(['comparable', []]);
    });
  }

  const [one, other] = [{ device_software: '1.0' }, { device_software: '2.0' }];
  const exported = { ffm_kg: '55.0', tbw_l: '40.0', phase_angle_deg: '5.5' };
  const byDevice = (['ffm_exported', 'tbw_exported', 'phase_angle_exported'] as const).map((measure) => ({
    changed: graded({ ...exported, ...one }, { ...exported, ...other }, {}, measure),
    same: graded({ ...exported, ...one }, { ...exported, ...one }, {}, measure),
  }));
  const byUs = (['ffm', 'phase_angle', 'weight'] as const).map((measure) => graded(one, other, {}, measure));

  test('device software matters for what the device computed, phase angle included, and for nothing else', () => {
    expect(byDevice.map(({ changed }) => changed())).toEqual(byDevice.map(() => ['no', ['software']]));
    expect(byDevice.map(({ same }) => same())).toEqual(byDevice.map(() => ['comparable', []]));
    expect(byUs.map((grade) => grade())).toEqual(byUs.map(() => ['comparable', []]));
  });
});

describe('recorded heights of an adult', () => {
  const near = graded({ height_cm: '176.0' }, { height_cm: '177.5' });
  const far = graded({ height_cm: '176.0' }, { height_cm: '177.6' });

  test('may differ by 1.5 cm and not by more', () => {
    expect(near()).toEqual(['comparable', []]);
    expect(far()).toEqual(['caution', ['height_differs']]);
  });
});

describe('dialysis', () => {
  const haemo = (hours: number | ''): Cells => ({ dialysis: 'haemo', hours_since_dialysis: hours });

  const sessions = [
    ['the same time after a session', haemo(4), haemo(4), 'comparable'],
    ['one hour apart', haemo(4), haemo(5), 'comparable'],
    ['more than one hour apart', haemo(4), haemo(5.1), 'no'],
    ['unknown at one visit', haemo(4), haemo(''), 'no'],
    ['unknown at both', haemo(''), haemo(''), 'no'],
    ['only at the later visit', {}, haemo(4), 'no'],
    ['peritoneal', { dialysis: 'peritoneal' }, { dialysis: 'peritoneal' }, 'no'],
    ['none', { dialysis: 'none' }, { dialysis: 'none' }, 'comparable'],
  ] as const;

  for (const [when, from, to, comparable] of sessions) {
    const grade = graded(from, to, {}, 'r_h');
    test(`vectors are compared only at the same time after a session: ${when}`, () => {
      expect(grade()).toEqual([comparable, comparable === 'no' ? ['dialysis_timing'] : []]);
    });
  }
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

  for (const [rule, column] of columns) {
    const [first, last] = [graded({ [column]: '' }, {}, {}, 'r'), graded({}, { [column]: '' }, {}, 'r')];
    test(`${rule}: unknown, a caution, where others record it at that site in that month`, () => {
      expect(first()).toEqual(['caution', [`unknown_${rule}`]]);
      expect(last()).toEqual(['caution', [`unknown_${rule}`]]);
    });
  }

  for (const [rule, column] of columns) {
    const rows = [reading('a', START), reading('a', LATER), ...WITNESS].map((row) => without(row, column));
    const latest = clinics.add(rows).latest('r');
    test(`${rule}: not recorded here, and grades nothing, where nobody does`, () => {
      const row = latest();
      expect([row.comparable, row.reasons]).toEqual(['comparable', ['no_error_study']]);
    });
  }

  const bare = without(reading('a', '2025-05-31'), 'rested');
  const others = [reading('b', '2025-05-01', { site: 'South', reading: 2 }), reading('b', '2025-06-01')];
  const alone = clinics.add([reading('a', START), bare, ...others]).latest('ffm');
  const beside = clinics.add([reading('a', START), bare, reading('b', '2025-05-01'), ...others]).latest('ffm');

  test('is looked at per site and calendar month', () => {
    expect(alone().comparable).toBe('comparable');
    expect(beside().comparable).toBe('caution');
  });

  const twice = (cells: Cells): (() => Graded) => {
    const rows = [
      { ...reading('a', START), reading: 1 },
      { ...reading('a', START), reading: 2, ...cells },
      reading('a', LATER),
      ...WITNESS,
    ];
    const latest = clinics.add(rows).latest('ffm');
    return () => [latest().comparable, latest().reasons];
  };
  const [oneEmpty, oneBroken, oneMoved] = [
    twice({ rested: '' }),
    twice({ rested: 'n' }),
    twice({ electrode_position: 'B' }),
  ];

  test('in one of two readings leaves the visit unknown, and a broken reading breaks it', () => {
    expect(oneEmpty()).toEqual(['caution', ['unknown_rested', 'no_error_study']]);
    expect(oneBroken()).toEqual(['caution', ['rested', 'no_error_study']]);
    expect(oneMoved()).toEqual(['caution', ['unknown_position', 'no_error_study']]);
  });

  const nobody = graded({ oedema: 'n', pregnant: 'n' }, { oedema: '', pregnant: '' });

  test('of body-water cautions is no reason: oedema or pregnancy that nobody recorded grades nothing', () => {
    expect(nobody()).toEqual(['comparable', []]);
  });
});

describe('a written procedure', () => {
  const procedure = (more: Partial<Settings['procedures'][number]> = {}): Partial<Settings> => ({
    procedures: [{ site: 'North', from: null, to: null, conditions: ['fasting', 'rested'], initials: 'AB', ...more }],
  });

  const oneEmpty = graded({ fasted_h: '' }, {}, procedure());
  const threeEmpty = graded({ fasted_h: '', rested: '' }, { fasted_h: '' }, procedure());

  test('stands for what is empty: by procedure, counted as comparable', async () => {
    expect(oneEmpty()).toEqual(['by-procedure', []]);
    expect(threeEmpty()).toEqual(['by-procedure', []]);
    const rows = [reading('a', START), reading('a', LATER, { fasted_h: '' })];
    const cohort = await cohortOf(engine, [...rows, ...WITNESS], procedure());
    expect((await latestOf(cohort, 'a', 'ffm')).admitted).toBe(true);
    expect(cohort.summary.pairsBySetting).toEqual({ strict: 2, caution: 2, all: 2 });
    expect(cohort.summary.byProcedure).toEqual({ visits: 1, pairs: 1 });
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

  const empty = { fasted_h: '' };
  const otherCondition = graded({ ...empty, bladder_emptied: '' }, {}, procedure());
  const otherSite = graded(empty, {}, procedure({ site: 'South' }));
  const laterStart = graded(empty, {}, procedure({ from: '2025-01-07' }));
  const earlierEnd = graded(empty, {}, procedure({ to: '2025-01-05' }));
  const thatDay = graded(empty, {}, procedure({ from: '2025-01-06', to: '2025-01-06' }));
  const everySite = graded(empty, {}, procedure({ site: null }));

  test('stands for no other condition, no other site and no other time', () => {
    expect(otherCondition()[1]).toEqual(['unknown_bladder']);
    expect(otherSite()[1]).toEqual(['unknown_fasting']);
    expect(laterStart()[1]).toEqual(['unknown_fasting']);
    expect(earlierEnd()[1]).toEqual(['unknown_fasting']);
    expect(thatDay()[0]).toBe('by-procedure');
    expect(everySite()[0]).toBe('by-procedure');
  });

  const fed = graded({ fasted_h: 2 }, { fasted_h: '' }, procedure());
  const unrested = graded({ rested: 'n' }, { rested: '' }, procedure());

  test('does not outweigh a recorded no', () => {
    expect(fed()).toEqual(['no', ['fasting']]);
    expect(unrested()).toEqual(['caution', ['rested']]);
  });
});

describe('the clinic’s own rules', () => {
  const rules = (rule: Settings['rules'][number]): Partial<Settings> => ({ rules: [rule] });

  const fed = { fasted_h: 2 };
  const fedCaution = graded(fed, {}, rules({ id: 'fasting', grade: 'caution' }));
  const fedOff = graded(fed, {}, rules({ id: 'fasting', grade: 'off' }));
  const fedNote = graded(fed, {}, rules({ id: 'fasting', grade: 'note' }));
  const unrestedNo = graded({ rested: 'n' }, {}, rules({ id: 'rested', grade: 'no' }));
  const emptyOff = graded({ rested: '' }, {}, rules({ id: 'rested', grade: 'off' }));

  test('give another grade: off and note say nothing against a pair', () => {
    expect(fedCaution()).toEqual(['caution', ['fasting']]);
    expect(fedOff()).toEqual(['comparable', []]);
    expect(fedNote()).toEqual(['comparable', []]);
    expect(unrestedNo()).toEqual(['no', ['rested']]);
    expect(emptyOff()).toEqual(['comparable', []]);
  });

  const pairWith = (cells: Cells, rule: Settings['rules'][number], measure: CohortFilter['measure'] = 'ffm') =>
    clinics.add([{ ...reading('a', START), ...cells }, reading('a', LATER), ...WITNESS], rules(rule)).latest(measure);
  const noted = pairWith(fed, { id: 'fasting', grade: 'note' });
  const notedUnknown = pairWith({ rested: '' }, { id: 'rested', grade: 'note' });
  const notedMet = pairWith({}, { id: 'fasting', grade: 'note' });
  const offFed = pairWith(fed, { id: 'fasting', grade: 'off' });

  test('that only note a condition say it beside the pair where it is broken, and nothing where it is off or unknown', () => {
    expect(noted().noted).toEqual(['fasting']);
    expect([notedUnknown().noted, notedMet().noted, offFed().noted]).toEqual([[], [], []]);
  });

  const otherSoftware = { device_software: '0.9', ffm_kg: '55.0' };
  const software = (grade: 'caution' | 'note', measure: CohortFilter['measure']) =>
    clinics
      .add(
        [reading('a', START, otherSoftware), reading('a', LATER, { ffm_kg: '55.0' })],
        rules({ id: 'software', grade }),
      )
      .latest(measure);
  const ofTheDevice = [software('caution', 'ffm_exported'), software('note', 'ffm_exported')];
  const computedHere = [software('caution', 'ffm'), software('note', 'ffm')];

  test('on device software grade what the device computed alone, whatever the grade', () => {
    expect(ofTheDevice.map((row) => [row().comparable, row().noted])).toEqual([
      ['caution', []],
      ['comparable', ['software']],
    ]);
    expect(computedHere.map((row) => [row().comparable, row().noted])).toEqual([
      ['comparable', []],
      ['comparable', []],
    ]);
  });

  const lower = graded({ fasted_h: 5 }, {}, rules({ id: 'fasting', limit: 4 }));
  const notLowEnough = graded({ fasted_h: 5 }, {}, rules({ id: 'fasting', limit: 5.5 }));
  const wider = graded({ height_cm: '170.0' }, {}, rules({ id: 'height_differs', limit: 10 }));

  test('move a limit and leave the grade', () => {
    expect(lower()).toEqual(['comparable', []]);
    expect(notLowEnough()).toEqual(['no', ['fasting']]);
    expect(wider()).toEqual(['comparable', []]);
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
