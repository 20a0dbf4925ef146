import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Cohort } from '../../lib/cohort/types/cohort';
import { addDays, type IsoDate } from '../../lib/core/iso-date';
import { openNodeEngine } from '../../lib/engine/node';
import type { Engine } from '../../lib/engine/types';
import { cohortOf, filterFor, reading, type Cells } from './small-clinic';

const START = '2025-01-06' as IsoDate;
const onDay = (days: number): IsoDate => addDays(START, days);
const AS_OF = onDay(84);

/** Ten kilograms lighter on the later visit, and less lean than any program here lets expect. */
const pair = (client: string, program: string, cells: Cells = {}, from = 0, to = 84): readonly Cells[] => [
  reading(client, onDay(from), { program, ...cells }),
  reading(client, onDay(to), { program, weight_kg: '70.0', r_ohm: '560.0', xc_ohm: '46.0', ...cells }),
];

const PROGRAMS = [
  { name: 'Whole', expectedChange: [{ measure: 'ffm' as const, perKgWeightChange: 0.25 }] },
  {
    name: 'Phases',
    expectedChange: [
      { measure: 'ffm' as const, fromWeek: 0, toWeek: 4, perKgWeightChange: 0.4 },
      { measure: 'ffm' as const, fromWeek: 4, toWeek: null, perKgWeightChange: 0.1 },
    ],
  },
  { name: 'Over', expectedChange: [{ measure: 'ffm' as const, fromWeek: 0, toWeek: 4, perKgWeightChange: 0.4 }] },
  {
    name: 'Monthly',
    expectedChange: [
      { measure: 'ffm' as const, fromWeek: 0, toWeek: 4, perMonth: 0.5 },
      { measure: 'ffm' as const, fromWeek: 4, perMonth: -0.2 },
    ],
  },
  { name: 'Other value', expectedChange: [{ measure: 'weight' as const, perKgWeightChange: 0.4 }] },
];

const ROWS: readonly Cells[] = [
  ...pair('whole', 'Whole'),
  ...pair('whole before', 'Whole', {}, -20),
  ...pair('no start', 'Whole', { program_start: '' }),
  ...pair('two phases', 'Phases'),
  ...pair('early baseline', 'Phases', {}, -30),
  ...pair('over', 'Over'),
  ...pair('monthly', 'Monthly'),
  ...pair('intended', 'Whole', { weight_change_intended: 'y' }),
  ...pair('not intended', 'Whole', { weight_change_intended: 'n' }),
  ...pair('not intended monthly', 'Monthly', { weight_change_intended: 'n' }),
  ...pair('other value', 'Other value'),
];

const made: { engine?: Engine; cohort?: Cohort; expected: ReadonlyMap<string, number> } = { expected: new Map() };

beforeAll(async () => {
  made.engine = await openNodeEngine();
  // An entered error far below every change: everybody whose value fell beyond expectation is on a list.
  const values = [{ measure: 'ffm' as const, betweenDaySd: 0.001, df: 40 }];
  const errorSource = { kind: 'entered' as const, values };
  made.cohort = await cohortOf(made.engine, ROWS, { programs: PROGRAMS, errorSource }, { asOf: AS_OF });
  const { talkTo } = await made.cohort.contacts(filterFor('ffm'));
  made.expected = new Map(talkTo.map(({ client, expected }) => [client, expected]));
});
afterAll(() => made.engine?.close());

const expected = (client: string): number => made.expected.get(client) ?? Number.NaN;

test('an expectation without weeks holds for the whole program, whenever the baseline was', () => {
  expect(expected('whole')).toBe(-2.5);
  expect(expected('whole before')).toBe(-2.5);
  expect(expected('no start')).toBe(-2.5);
});

test('a pair that spans two phases has each by its share of the days', () => {
  // 28 of 84 days at 0.4, 56 at 0.1.
  expect(expected('two phases')).toBeCloseTo(-10 * ((28 / 84) * 0.4 + (56 / 84) * 0.1), 12);
  // What lies before the start counts as the start.
  expect(expected('early baseline')).toBe(expected('two phases'));
});

test('days in no phase let expect nothing', () => {
  expect(expected('over')).toBeCloseTo((-10 * 28 * 0.4) / 84, 12);
});

test('a change per month takes each phase’s own days', () => {
  expect(expected('monthly')).toBeCloseTo((28 * 0.5 - 56 * 0.2) / 30.4375, 12);
});

test('where a client’s change of weight is not intended, nothing is expected of it', () => {
  expect(expected('intended')).toBe(-2.5);
  expect(expected('not intended')).toBe(0);
  expect(expected('not intended monthly')).toBe(expected('monthly'));
});

test('another value’s expectation is not the lean value’s', () => {
  expect(expected('other value')).toBe(0);
});
