import { afterAll, beforeAll, expect, test } from 'vitest';
import type { SettingsInput } from '../../lib/cohort/settings';
import type { ContactLists } from '../../lib/cohort/types/contact-lists';
import type { IsoDate } from '../../lib/core/iso-date';
import { openNodeEngine } from '../../lib/engine/node';
import type { Engine } from '../../lib/engine/types';
import { cohortOf, errorStudy, filterFor, latestOf, reading, type Cells } from './small-clinic';

let engine: Engine;
beforeAll(async () => {
  engine = await openNodeEngine();
});
afterAll(() => engine.close());

/** A study with a small error in every value: fat-free mass about 0.3 kg. */
const STUDY = errorStudy(30, (person, visit) => ({
  r_ohm: visit === 0 ? '500.0' : person % 2 === 0 ? '502.0' : '498.0',
  xc_ohm: visit === 0 ? '50.0' : person % 2 === 0 ? '49.6' : '50.4',
  weight_kg: visit === 0 ? '80.0' : person % 2 === 0 ? '80.2' : '79.8',
}));

/** R up, Xc down: fat-free mass down with the phase angle. R and Xc up together: less water. */
const CELLS: Cells = { r_ohm: '540.0', xc_ohm: '46.0' };
const WATER: Cells = { r_ohm: '540.0', xc_ohm: '54.0' };

const listsOf = async (later: Cells, date = '2025-05-20', settings: SettingsInput = {}, first: Cells = {}) => {
  const rows = [reading('a', '2025-01-06', first), reading('a', date, { ...later })];
  const cohort = await cohortOf(engine, [...STUDY, ...rows], settings, { asOf: '2025-06-30' as IsoDate });
  return cohort.contacts(filterFor('ffm'));
};
const places = (lists: ContactLists) => [lists.talkTo.map((row) => row.fits), lists.measureAgain.map((row) => row.why)];

test('a loss beyond error with the phase angle down is talked about, as cell mass; 42 days after the visit and no longer', async () => {
  expect(places(await listsOf(CELLS, '2025-05-19'))).toEqual([['cell-mass'], []]);
  expect(places(await listsOf(CELLS, '2025-05-18'))).toEqual([[], []]);
});

test('a loss with the impedance up and the phase angle kept is measured again: less water', async () => {
  expect(places(await listsOf(WATER))).toEqual([[], ['fits-less-water']]);
});

/** Per metre of height, so that R/H and Xc/H are the numbers of the check: 300 and 31 Ω/m first. */
const perMetre = (resistance: number, reactance: number): Cells => ({
  height_cm: '160.0',
  r_ohm: String(1.6 * resistance),
  xc_ohm: String(1.6 * reactance),
});

// Check values computed in R: a step of (25, 2.5833) Ω/m leaves the phase angle as it is, one of (25, −2) does not.
test.each([
  [2.5833333, 326.7305316, 5.89962505, 'fits_less_water', [[], ['fits-less-water']]],
  [-2, 326.2912809, 5.09904202, 'fits_cell_mass', [['cell-mass'], []]],
] as const)('a step of 25 and %d Ω/m', async (step, impedance, phase, pattern, listed) => {
  const rows = [reading('a', '2025-01-06', perMetre(300, 31)), reading('a', '2025-05-20', perMetre(325, 31 + step))];
  const cohort = await cohortOf(engine, [...STUDY, ...rows], {}, { asOf: '2025-06-30' as IsoDate });
  const [z, angle] = [await latestOf(cohort, 'a', 'z'), await latestOf(cohort, 'a', 'phase_angle')];
  expect(z.valueFrom / 1.6).toBeCloseTo(301.5974138, 7);
  expect(z.valueTo / 1.6).toBeCloseTo(impedance, 7);
  expect(angle.valueFrom).toBeCloseTo(5.89962505, 7);
  expect(angle.valueTo).toBeCloseTo(phase, 7);
  expect((await latestOf(cohort, 'a', 'ffm')).reasons).toContain(pattern);
  expect(places(await cohort.contacts(filterFor('ffm')))).toEqual(listed);
});

test('a loss that fits neither is talked about with no guess', async () => {
  // Less weight too, and the phase angle up: neither pattern.
  expect(places(await listsOf({ r_ohm: '540.0', xc_ohm: '60.0' }))).toEqual([['cannot-tell'], []]);
});

test('nobody is listed whose program has ended', async () => {
  const ended = { program_end: '2025-05-25' };
  expect(places(await listsOf({ ...CELLS, ...ended }, '2025-05-20', {}, ended))).toEqual([[], []]);
});

test('what the program lets expect is taken off first', async () => {
  const light = { weight_kg: '70.0', r_ohm: '507.0', xc_ohm: '48.0' };
  expect((await listsOf(light)).talkTo).toHaveLength(1);
  const expected = {
    programs: [
      {
        name: 'Walking',
        plannedVisitWeeks: [],
        reviews: [],
        expectedChange: [{ measure: 'ffm' as const, perKgWeightChange: 0.4 }],
      },
    ],
  };
  expect((await listsOf(light, '2025-05-20', expected)).talkTo).toEqual([]);
});

test('the values behind a listed client leave out those of another electrode path', async () => {
  const rows = [
    reading('a', '2025-01-06'),
    reading('a', '2025-03-06', { electrode_path: 'foot-to-foot', r_ohm: '300.0' }),
    reading('a', '2025-05-20', CELLS),
  ];
  const cohort = await cohortOf(engine, [...STUDY, ...rows], {}, { asOf: '2025-06-30' as IsoDate });
  const [listed] = (await cohort.contacts(filterFor('ffm'))).talkTo;
  expect(listed?.strip.map(({ date }) => date)).toEqual(['2025-01-06', '2025-05-20']);
});

test('a weight loss that was not meant is listed though the lean value is held; meant it is not, unknown it is asked', async () => {
  const heavy = { weight_kg: '120.0' };
  const lighter = { weight_kg: '111.0' };
  const person = (client: string, intended: string) => [
    reading(client, '2025-01-06', { ...heavy, weight_change_intended: intended }),
    reading(client, '2025-05-20', { ...lighter, weight_change_intended: intended }),
  ];
  const rows = [...STUDY, ...person('against', 'n'), ...person('meant', 'y'), ...person('unsaid', '')];
  const lists = await (await cohortOf(engine, rows, {}, { asOf: '2025-06-30' as IsoDate })).contacts(filterFor('ffm'));
  expect(lists.talkTo.map(({ client, change, reasons }) => [client, change.measure, reasons])).toMatchObject([
    ['against', 'weight', [{ rule: 'weight-loss', percent: 7.5, cutOff: 'glim-weight-loss-within-6-months' }]],
  ]);
  expect(lists.weightQuestions.map(({ client }) => client)).toEqual(['unsaid']);
  expect(lists.rules.find(({ rule }) => rule === 'weight-loss')).toMatchObject({ checked: 1, listed: 1 });
});

test('a rule that the clinic switched off lists nobody and is not counted', async () => {
  const off = { contacts: { nearFactor: 1.15, rulesOff: ['lean-change' as const] } };
  const lists = await listsOf(CELLS, '2025-05-20', off);
  expect(lists.talkTo).toEqual([]);
  expect(lists.rules.map(({ rule }) => rule)).toEqual(['lean-slope', 'lean-share', 'weight-loss']);
});

const asOf = { asOf: '2025-06-30' as IsoDate };
const ENTERED = { program: 'Check-ups only', program_start: '2025-05-01' };

test('every open program is judged, one row a client: a second one takes no confirmed loss off the list', async () => {
  const rows = [
    reading('a', '2025-01-06'),
    reading('a', '2025-05-03', { ...CELLS, ...ENTERED }),
    reading('a', '2025-05-14', CELLS),
    reading('a', '2025-05-20', { ...CELLS, ...ENTERED }),
  ];
  const lists = await (await cohortOf(engine, [...STUDY, ...rows], {}, asOf)).contacts(filterFor('ffm'));
  expect(lists.talkTo).toMatchObject([
    { client: 'a', program: 'Walking', change: { from: '2025-01-06', to: '2025-05-20' }, seenAtTwoVisits: true },
  ]);
  expect(lists.measureAgain).toEqual([]);
  expect(lists.rules.find(({ rule }) => rule === 'lean-change')).toMatchObject({ checked: 1, listed: 1 });
});

test('a loss that one program means is not held against the client by another that says nothing of weight', async () => {
  const light = { weight_kg: '70.0', r_ohm: '507.0', xc_ohm: '48.0' };
  const rows = [
    reading('a', '2025-01-06'),
    reading('a', '2025-01-10', { ...ENTERED, program_start: '2025-01-10' }),
    reading('a', '2025-05-20', light),
    reading('a', '2025-05-21', { ...light, ...ENTERED, program_start: '2025-01-10' }),
  ];
  const program = (loss: boolean) => ({
    programs: [
      {
        name: 'Walking',
        plannedVisitWeeks: [],
        reviews: [],
        intended: loss ? { weight: 'loss' as const } : {},
        expectedChange: [{ measure: 'ffm' as const, perKgWeightChange: 0.4 }],
      },
    ],
  });
  const listed = async (loss: boolean) =>
    (await (await cohortOf(engine, [...STUDY, ...rows], program(loss), asOf)).contacts(filterFor('ffm'))).talkTo.map(
      ({ program: name }) => name,
    );
  expect(await listed(true)).toEqual([]);
  expect(await listed(false)).toEqual(['Check-ups only']);
});

test('a condition that the site records and one visit does not know is that visit’s fault; recorded nowhere it is none', async () => {
  const others = [reading('b', '2025-01-06'), reading('b', '2025-05-20')];
  const again = async (first: Cells, latest: Cells, recorded: readonly Cells[]) => {
    const rows = [...STUDY, ...recorded, reading('a', '2025-01-06', first), reading('a', '2025-05-20', latest)];
    return (await (await cohortOf(engine, rows, {}, asOf)).contacts(filterFor('ffm'))).measureAgain;
  };
  const [known, unknown] = [CELLS, { ...CELLS, since_exercise_h: '' }];
  expect(await again({}, unknown, others)).toMatchObject([{ client: 'a', why: 'caution', otherBaseline: null }]);
  expect(await again({ since_exercise_h: '' }, known, others)).toMatchObject([{ client: 'a', why: 'other-baseline' }]);
  expect(await again({}, unknown, [])).toEqual([]);
});

test('nobody is called after a meal, whichever pairs take part; what is not known may take part', async () => {
  const rows = [
    ...STUDY,
    reading('meal', '2025-01-06'),
    reading('meal', '2025-05-20', { ...CELLS, fasted_h: 1 }),
    reading('blank', '2025-01-06'),
    reading('blank', '2025-05-20', { ...CELLS, since_exercise_h: '' }),
  ];
  const cohort = await cohortOf(engine, rows, {}, asOf);
  for (const comparable of ['strict', 'caution', 'all'] as const) {
    const { talkTo, measureAgain } = await cohort.contacts(filterFor('ffm', { comparable }));
    const again = measureAgain.map(({ client, why }) => `${client}: ${why}`);
    if (comparable === 'strict') expect(again).toEqual(['meal: cannot-compare', 'blank: caution']);
    else expect(again).toEqual(['meal: cannot-compare']);
    expect(talkTo.map(({ client }) => client)).toEqual(comparable === 'strict' ? [] : ['blank']);
  }
});

test('another baseline that a person chose counts instead of the one by date, and both are told', async () => {
  const rows = [
    ...STUDY,
    reading('a', '2025-01-06', { fasted_h: 2 }),
    reading('a', '2025-03-06'),
    reading('a', '2025-05-20', CELLS),
  ];
  const settings = {
    answers: [
      { kind: 'baseline' as const, client: 'a', program: 'Walking', start: '2025-01-06', visitDate: '2025-03-06' },
    ],
  };
  const byDate = await cohortOf(engine, rows, {}, asOf);
  expect((await byDate.contacts(filterFor('ffm'))).measureAgain).toMatchObject([
    { client: 'a', why: 'other-baseline', otherBaseline: '2025-03-06', programStart: '2025-01-06' },
  ]);
  const chosen = await cohortOf(engine, rows, settings, asOf);
  const [listed] = (await chosen.contacts(filterFor('ffm'))).talkTo;
  expect(listed?.change.from).toBe('2025-03-06');
  const detail = await chosen.client(listed?.clientKey ?? 0, filterFor('ffm'));
  expect(detail?.enrolments).toMatchObject([
    { baseline: '2025-03-06', baselineChosen: true, baselineByDate: '2025-01-06', lateBaseline: false },
  ]);
});
