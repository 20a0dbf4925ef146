import fc from 'fast-check';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Cohort } from '../../lib/cohort/types/cohort';
import { REVIEW_VISITS, type ReviewVisit } from '../../lib/cohort/types/filter';
import { addDays, daysBetween, type IsoDate } from '../../lib/core/iso-date';
import { openNodeEngine } from '../../lib/engine/node';
import type { Engine } from '../../lib/engine/types';
import { cohortOf, filterFor, reading } from './small-clinic';

/** Everybody starts on a Monday; reviews at days 42 ± 14 and 84 ± 21, whose windows do not overlap. */
const START = '2025-01-06' as IsoDate;
const REVIEWS = [
  { week: 6, windowWeeks: 2 },
  { week: 12, windowWeeks: 3 },
];
const AS_OF = addDays(START, 120);

const histories = fc.sample(
  fc.record({
    spoiled: fc.constantFrom('', '', '', 'fasting', 'rest'),
    visits: fc.uniqueArray(
      fc.record({
        day: fc.oneof(fc.integer({ min: 26, max: 58 }), fc.integer({ min: 60, max: 108 })),
        spoiled: fc.constantFrom('', '', 'fasting', 'fasting', 'rest'),
        weighed: fc.constantFrom(true, true, true, true, false),
      }),
      { minLength: 1, maxLength: 9, selector: ({ day }) => day },
    ),
  }),
  { seed: 20260114, numRuns: 240 },
);

type Visit = (typeof histories)[number]['visits'][number];

const cells = (spoiled: string, weighed = true) => ({
  ...(spoiled === 'fasting' ? { fasted_h: 3 } : {}),
  ...(spoiled === 'rest' ? { rested: 'n' } : {}),
  ...(weighed ? {} : { weight_kg: '' }),
});

const clientOf = (index: number): string => `P${String(index).padStart(3, '0')}`;

/** 0 comparable, 1 with a caution, 2 cannot be compared: the default rules on a meal and on rest. */
const grade = (...spoiled: readonly string[]): number =>
  spoiled.includes('fasting') ? 2 : spoiled.includes('rest') ? 1 : 0;

/** Plain loops over one history: the day that each rule takes for a review; undefined where the window holds no weight. */
const plainDay = (
  { spoiled, visits }: (typeof histories)[number],
  { week, windowWeeks }: (typeof REVIEWS)[number],
  rule: ReviewVisit,
): number | undefined => {
  const target = 7 * week;
  let taken: Visit | undefined;
  const isBefore = (a: Visit, b: Visit): boolean => {
    const [distanceA, distanceB] = [Math.abs(a.day - target), Math.abs(b.day - target)];
    const [gradeA, gradeB] = [grade(spoiled, a.spoiled), grade(spoiled, b.spoiled)];
    if (rule === 'first-in-window') return a.day < b.day;
    if (rule === 'closest-comparable' && gradeA !== gradeB) return gradeA < gradeB;
    return distanceA === distanceB ? a.day < b.day : distanceA < distanceB;
  };
  for (const visit of visits) {
    if (!visit.weighed || Math.abs(visit.day - target) > 7 * windowWeeks) continue;
    if (taken === undefined || isBefore(visit, taken)) taken = visit;
  }
  return taken?.day;
};

const made: { engine?: Engine; cohort?: Cohort } = {};
const cohort = (): Cohort => {
  if (made.cohort === undefined) throw new Error('no cohort');
  return made.cohort;
};

beforeAll(async () => {
  made.engine = await openNodeEngine();
  const rows = histories.flatMap(({ spoiled, visits }, index) => [
    reading(clientOf(index), START, cells(spoiled)),
    ...visits.map(({ day, spoiled: how, weighed }) =>
      reading(clientOf(index), addDays(START, day), cells(how, weighed)),
    ),
  ]);
  made.cohort = await cohortOf(
    made.engine,
    rows,
    { programs: [{ name: 'Walking', reviews: REVIEWS }] },
    { asOf: AS_OF },
  );
});
afterAll(() => made.engine?.close());

const expected = (rule: ReviewVisit): readonly string[] =>
  histories
    .flatMap((history, index) =>
      REVIEWS.flatMap((review) => {
        const day = plainDay(history, review, rule);
        return day === undefined ? [] : [`${clientOf(index)} ${String(review.week)} ${String(day)}`];
      }),
    )
    .sort();

test.each(REVIEW_VISITS)('%s takes the visit that plain loops take, for pairs and for counts', async (reviewVisit) => {
  const filter = filterFor('weight', { comparable: 'all', reviewVisit });
  const pairs = await cohort().changes(filter, 'baseline-review');
  expect(
    pairs
      .map(({ client, reviewWeek, to }) => `${client} ${String(reviewWeek)} ${String(daysBetween(START, to))}`)
      .sort(),
  ).toEqual(expected(reviewVisit));
  const reviews = await cohort().reviews(filter);
  expect(
    reviews
      .flatMap(({ client, week, actualDay, state }) =>
        state === 'seen' ? [`${client} ${String(week)} ${String(actualDay)}`] : [],
      )
      .sort(),
  ).toEqual(expected(reviewVisit));
  for (const row of pairs) {
    const of = reviews.find(({ client, week }) => client === row.client && week === row.reviewWeek);
    expect(of?.comparable).toBe(row.comparable);
  }
});

test('a sensitivity changes which visit is compared, never who was seen of those due', async () => {
  const counts = async (reviewVisit?: ReviewVisit) =>
    (await cohort().reviewCounts(filterFor('weight', reviewVisit === undefined ? {} : { reviewVisit }))).map(
      ({ program, week, due, seen, pairs }) => ({ program, week, due, seen, pairs }),
    );
  const byDefault = await counts();
  expect(await counts('closest')).toEqual(byDefault);
  expect(await counts('closest-comparable')).toEqual(byDefault);
  expect(await counts('first-in-window')).toEqual(byDefault);
  const days = REVIEW_VISITS.map(expected);
  expect(new Set(days.map((list) => list.join('\n'))).size).toBe(REVIEW_VISITS.length);
});

test('more pairs take part where the closest comparable visit is taken, and no other visit of the window would do', async () => {
  const taking = async (reviewVisit: ReviewVisit) =>
    (await cohort().changes(filterFor('weight', { reviewVisit }), 'baseline-review')).filter(
      ({ result }) => result !== 'cannot-compare',
    ).length;
  const whole = histories.flatMap((history) =>
    REVIEWS.filter(({ week, windowWeeks }) =>
      history.visits.some(
        ({ day, spoiled, weighed }) =>
          weighed && Math.abs(day - 7 * week) <= 7 * windowWeeks && grade(history.spoiled, spoiled) === 0,
      ),
    ),
  ).length;
  expect(await taking('closest-comparable')).toBe(whole);
  expect(await taking('closest')).toBeLessThan(whole);
});
