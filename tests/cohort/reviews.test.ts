import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Cohort } from '../../lib/cohort/types/cohort';
import type { ReviewRow } from '../../lib/cohort/types/reviews';
import { addDays, type IsoDate } from '../../lib/core/iso-date';
import { openNodeEngine } from '../../lib/engine/node';
import type { Engine } from '../../lib/engine/types';
import { cohortOf, filterFor, reading, type Cells } from './small-clinic';

/** Everybody starts on a Monday; days count from it. As-of is day 90. */
const START = '2025-01-06' as IsoDate;
const onDay = (days: number): IsoDate => addDays(START, days);
const AS_OF = onDay(90);

/** Reviews at days 42 ± 14, 63 ± 14 (which overlap from 49 to 56) and 84 ± 14, of which the last is open at as-of. */
const PROGRAMS = [
  {
    name: 'Walking',
    reviews: [
      { week: 6, windowWeeks: 2 },
      { week: 9, windowWeeks: 2 },
      { week: 12, windowWeeks: 2 },
    ],
  },
  { name: 'Strength', reviews: [{ week: 4, windowWeeks: 1 }] },
];

const visits = (client: string, days: readonly number[], cells: Cells = {}): readonly Cells[] =>
  days.map((day) => reading(client, onDay(day), cells));

const ROWS: readonly Cells[] = [
  ...visits('closest', [0, 30, 40, 45]),
  ...visits('tie', [0, 39, 45]),
  ...visits('between', [0, 52]),
  ...visits('nearer', [0, 53]),
  ...visits('edges', [0, 28, 77]),
  ...visits('outside', [0, 27, 78]),
  ...visits('early', [0, 71]),
  reading('passed', onDay(0)),
  reading('passed', onDay(41), { weight_kg: '' }),
  reading('passed', onDay(47)),
  ...visits('bare', [0, 41], { weight_kg: '' }),
  reading('judged', onDay(0)),
  reading('judged', onDay(42), { fasted_h: 2 }),
  reading('judged', onDay(46)),
  ...visits('ended before', [0, 40], { program_end: onDay(27), end_reason: 'moved' }),
  ...visits('ended inside', [0], { program_end: onDay(28), end_reason: 'moved' }),
  ...visits('no start', [3, 45], { program_start: '' }),
  ...visits('no baseline', [40]),
  ...visits('both', [0, 28], { program: 'Walking' }),
  ...visits('both', [0], { program: 'Strength', program_start: START, visit_purpose: 'repeat', device_id: 'Unit 2' }),
  reading('study', onDay(0)),
  reading('study', onDay(42), { visit_purpose: 'precision' }),
];

const made: { engine?: Engine; cohort?: Cohort; weight: readonly ReviewRow[] } = { weight: [] };

beforeAll(async () => {
  made.engine = await openNodeEngine();
  made.cohort = await cohortOf(made.engine, ROWS, { programs: PROGRAMS }, { asOf: AS_OF });
  made.weight = await made.cohort.reviews(filterFor('weight'));
});
afterAll(() => made.engine?.close());

const cohort = (): Cohort => {
  if (made.cohort === undefined) throw new Error('no cohort');
  return made.cohort;
};

/** `state` or `state@day` of a client's reviews by week. */
const of = (client: string, rows = made.weight, program = 'Walking'): readonly string[] =>
  rows
    .filter((row) => row.client === client && row.program === program)
    .map(({ state, actualDay }) => (actualDay === null ? state : `${state}@${String(actualDay)}`));

describe('a planned review', () => {
  test('is seen at the visit of its window that is closest to the target, ties at the earlier', () => {
    expect(of('closest')).toEqual(['seen@40', 'not-seen', 'not-yet']);
    expect(of('tie')).toEqual(['seen@39', 'not-seen', 'not-yet']);
  });

  test('of two whose windows hold the same visit has it where its target is nearer, ties at the earlier', () => {
    expect(of('between')).toEqual(['seen@52', 'not-seen', 'not-yet']);
    expect(of('nearer')).toEqual(['not-seen', 'seen@53', 'not-yet']);
  });

  test('has a window that holds its first and last day', () => {
    expect(of('edges')).toEqual(['seen@28', 'not-seen', 'seen-early@77']);
    expect(of('outside')).toEqual(['not-seen', 'not-seen', 'seen-early@78']);
    const [first] = made.weight.filter(({ client }) => client === 'edges');
    expect(first).toMatchObject({
      week: 6,
      windowWeeks: 2,
      target: onDay(42),
      windowFrom: onDay(28),
      windowTo: onDay(56),
      seenOn: onDay(28),
    });
  });

  test('whose window is still open is not due, seen or not', () => {
    expect(of('early')).toEqual(['not-seen', 'seen@71', 'not-yet']);
  });

  test('passes over a visit that does not hold the value, and counts it', async () => {
    expect(of('passed')).toEqual(['seen@47', 'not-seen', 'not-yet']);
    expect(made.weight.find(({ client }) => client === 'passed')).toMatchObject({ passedOver: 1 });
    expect(of('passed', await cohort().reviews(filterFor('r_h')))[0]).toBe('seen@41');
    expect(of('bare')).toEqual(['not-seen', 'not-seen', 'not-yet']);
    expect(made.weight.find(({ client }) => client === 'bare')).toMatchObject({ passedOver: 1, comparable: null });
  });

  test('takes the closest of all visits first and judges it afterwards', async () => {
    expect(made.weight.find(({ client }) => client === 'judged')).toMatchObject({ actualDay: 42, comparable: 'no' });
    const pairs = await cohort().changes({ ...filterFor('weight'), reviewWeek: 6 }, 'baseline-review');
    expect(pairs.find(({ client }) => client === 'judged')).toMatchObject({
      from: START,
      to: onDay(42),
      result: 'cannot-compare',
      reviewWeek: 6,
    });
  });

  test('is not due where the program ended before the window, and is where it ended inside', () => {
    expect(of('ended before')).toEqual(['ended-before', 'ended-before', 'ended-before']);
    expect(of('ended inside')).toEqual(['not-seen', 'ended-before', 'ended-before']);
  });

  test('counts from the first visit where no start is known, and is due without a baseline', () => {
    expect(of('no start')).toEqual(['seen@42', 'not-seen', 'not-yet']);
    expect(of('no baseline')).toEqual(['seen@40', 'not-seen', 'not-yet']);
    expect(made.weight.find(({ client }) => client === 'no baseline')).toMatchObject({ comparable: null });
  });

  test('stands once for each of several programs at once, and no visit of the error study serves it', () => {
    expect(of('both')).toEqual(['seen@28', 'not-seen', 'not-yet']);
    expect(of('both', made.weight, 'Strength')).toEqual(['seen@28']);
    expect(of('study')).toEqual(['not-seen', 'not-seen', 'not-yet']);
  });
});

describe('the counts of a program’s reviews', () => {
  test('are those of the rows: seen of due, early and ended apart', async () => {
    const counts = await cohort().reviewCounts(filterFor('weight'));
    for (const count of counts) {
      const rows = made.weight.filter(({ program, week }) => program === count.program && week === count.week);
      const n = (...states: readonly string[]): number => rows.filter(({ state }) => states.includes(state)).length;
      expect(count).toMatchObject({
        due: n('seen', 'not-seen'),
        seen: n('seen'),
        seenEarly: n('seen-early'),
        notYet: n('not-yet'),
        endedBefore: n('ended-before'),
        comparable: rows.filter(({ state, comparable }) => state === 'seen' && comparable === 'comparable').length,
      });
    }
    expect(counts.map(({ program, week, due, seen }) => [program, week, due, seen])).toEqual([
      ['Strength', 4, 1, 1],
      ['Walking', 6, 15, 9],
      ['Walking', 9, 14, 2],
      ['Walking', 12, 0, 0],
    ]);
  });

  test('hold the quartiles (type 7) of the day on which people were seen', async () => {
    const [, six, , twelve] = await cohort().reviewCounts(filterFor('weight'));
    // Seen on days 28, 28, 39, 40, 40, 42, 42, 47 and 52.
    expect(six?.actualDay).toEqual({ q1: 39, median: 40, q3: 42 });
    expect(six?.passedOver).toBe(2);
    expect(twelve?.actualDay).toBeNull();
  });

  test('follow the filter: one review, one program', async () => {
    const counts = await cohort().reviewCounts({ ...filterFor('weight'), program: 'Walking', reviewWeek: 9 });
    expect(counts.map(({ program, week }) => [program, week])).toEqual([['Walking', 9]]);
  });
});

test('pairs from baseline to a planned review are made of reviews that are due and seen, one each', async () => {
  const pairs = await cohort().changes(filterFor('weight', { comparable: 'all' }), 'baseline-review');
  const seen = made.weight.filter(({ state, comparable }) => state === 'seen' && comparable !== null);
  expect(
    pairs.map(({ client, program, reviewWeek, to }) => [client, program, reviewWeek, to].join(' ')).sort(),
  ).toEqual(seen.map(({ client, program, week, seenOn }) => [client, program, week, seenOn].join(' ')).sort());
  expect(pairs.some(({ client }) => client === 'early')).toBe(true);
  expect(pairs.some(({ client, reviewWeek }) => client === 'edges' && reviewWeek === 12)).toBe(false);
});
