import { mean, sampleStandardDeviation } from 'simple-statistics';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Cohort } from '../../lib/cohort/types/cohort';
import { openNodeEngine } from '../../lib/engine/node';
import type { Engine } from '../../lib/engine/types';
import { covarianceFromSums } from '../../lib/stats/covariance-from-sums';
import { hotellingPaired } from '../../lib/stats/hotelling-paired';
import { hotellingTwoSample } from '../../lib/stats/hotelling-two-sample';
import { hotellingUnequal } from '../../lib/stats/hotelling-unequal';
import { tQuantile } from '../../lib/stats/t-quantile';
import { expectClose } from '../stats/expect-close';
import { openDemoClinic } from './demo-clinic';
import { filterFor } from './small-clinic';

let engine: Engine;
let cohort: Cohort;
beforeAll(async () => {
  engine = await openNodeEngine();
  ({ cohort } = await openDemoClinic(engine));
});
afterAll(() => engine.close());

type Point = readonly [number, number];

const sampleOf = (points: readonly Point[]) => {
  const [x, y] = [points.map(([first]) => first), points.map(([, second]) => second)];
  const centre = [mean(x), mean(y)] as const;
  const products = (a: readonly number[], b: readonly number[], ma: number, mb: number): number =>
    a.reduce((sum, value, index) => sum + (value - ma) * ((b[index] ?? NaN) - mb), 0);
  const sample = covarianceFromSums({
    n: points.length,
    mean: centre,
    sxx: products(x, x, centre[0], centre[0]),
    sxy: products(x, y, centre[0], centre[1]),
    syy: products(y, y, centre[1], centre[1]),
  });
  if (sample === undefined) throw new Error('too few points');
  return sample;
};

test.each(['consecutive', 'baseline-latest'] as const)(
  'programs: n, mean, SD and t interval are those of the changes that take part, %s',
  async (purpose) => {
    for (const comparable of ['strict', 'caution', 'all'] as const) {
      for (const measure of ['ffm', 'weight', 'phase_angle', 'ffm_exported'] as const) {
        const filter = filterFor(measure, { comparable });
        const rows = await cohort.changes(filter, purpose);
        const programs = await cohort.programs(filter, purpose);
        expect(programs).toHaveLength(5);
        expect(programs.reduce((sum, row) => sum + row.nPairs, 0)).toBe(rows.length);
        for (const program of programs) {
          const own = rows.filter((row) => row.program === program.program);
          const taken = own.filter((row) => row.admitted && row.guard !== 'hold' && row.guard !== 'stop');
          const changes = taken.map((row) => row.change);
          const [m, sd] = [mean(changes), sampleStandardDeviation(changes)];
          const half = (tQuantile(0.975, changes.length - 1) * sd) / Math.sqrt(changes.length);
          expect([program.nPairs, program.nComparable]).toEqual([own.length, changes.length]);
          const ends = new Set(taken.map(({ clientKey, toVisit }) => `${String(clientKey)} ${String(toVisit)}`));
          const sharing = taken.filter(({ clientKey, fromVisit }) =>
            ends.has(`${String(clientKey)} ${String(fromVisit)}`),
          );
          expect(program.nSharing).toBe(sharing.length);
          expect(sharing.length > 0).toBe(purpose === 'consecutive');
          expectClose(program.mean ?? NaN, m, 1e-9, sd);
          expectClose(program.sd ?? NaN, sd);
          expectClose(program.interval?.[0], m - half, 1e-9, sd);
          expectClose(program.interval?.[1], m + half, 1e-9, sd);
          const count = (result: string) => own.filter((row) => row.result === result).length;
          expect([program.up, program.down, program.within, program.cannotCompare, program.noThreshold]).toEqual(
            ['up', 'down', 'within', 'cannot-compare', 'no-threshold'].map(count),
          );
          expect([program.held, program.stopped]).toEqual(
            ['hold', 'stop'].map((guard) => own.filter((row) => row.guard === guard).length),
          );
        }
      }
    }
  },
);

test('counts of every value sum to its pairs', async () => {
  for (const measure of cohort.listed) {
    for (const row of await cohort.programs(filterFor(measure), 'baseline-latest')) {
      const sum = row.up + row.down + row.within + row.cannotCompare + row.noThreshold + row.held + row.stopped;
      expect([measure, row.program, sum]).toEqual([measure, row.program, row.nPairs]);
    }
  }
});

test('vectors: paired T² is that of the changes of R/H and Xc/H, sexes pooled', async () => {
  for (const comparable of ['strict', 'all'] as const) {
    const { paired } = await cohort.vectors(filterFor('ffm', { comparable }));
    expect(paired).toHaveLength(5);
    const [rh, xch] = await Promise.all(
      (['r_h', 'xc_h'] as const).map((measure) =>
        cohort.changes(filterFor(measure, { comparable }), 'baseline-latest'),
      ),
    );
    for (const row of paired) {
      const moved = (rh ?? [])
        .filter((change) => change.program === row.program && change.admitted && change.guard !== 'stop')
        .map((change): Point => {
          const other = xch?.find(
            (candidate) =>
              candidate.client === change.client &&
              candidate.program === change.program &&
              candidate.to === change.to &&
              candidate.from === change.from,
          );
          return [change.change, other?.change ?? NaN];
        });
      const expected = hotellingPaired(sampleOf(moved));
      if (expected === undefined) throw new Error('no test');
      expect([row.n, row.df1, row.df2]).toEqual([moved.length, 2, moved.length - 2]);
      expectClose(row.mean[0], mean(moved.map(([x]) => x)), 1e-9, 10);
      expectClose(row.t2 ?? NaN, expected.t2);
      expectClose(row.f ?? NaN, expected.f);
      expectClose(row.p ?? NaN, expected.p);
    }
  }
});

test('vectors: groups and tests between them are those of the latest vectors, one sex at a time', async () => {
  const { groups, between, points } = await cohort.vectors(filterFor('ffm'));
  const pointsOf = (program: string, sex: string): readonly Point[] =>
    points.filter((point) => point.program === program && point.sex === sex).map((point) => [point.rh, point.xch]);
  expect(groups).toHaveLength(10);
  for (const group of groups) {
    const sample = sampleOf(pointsOf(group.program, group.sex));
    expect(group.n).toBe(sample.n);
    expectClose(group.mean[0], sample.mean[0]);
    expectClose(group.cov?.[0][1] ?? NaN, sample.cov.xy);
    expectClose(group.cov?.[1][1] ?? NaN, sample.cov.yy);
    expect(group.confidence95).not.toBeNull();
  }
  expect(between).toHaveLength(20);
  for (const row of between) {
    const [a, b] = [sampleOf(pointsOf(row.a, row.sex)), sampleOf(pointsOf(row.b, row.sex))];
    const [pooled, unequal] = [hotellingTwoSample(a, b), hotellingUnequal(a, b)];
    if (pooled === undefined || unequal === undefined) throw new Error('no test');
    expectClose(row.t2 ?? NaN, pooled.t2);
    expectClose(row.p ?? NaN, pooled.p);
    expectClose(row.mahalanobisD ?? NaN, pooled.mahalanobisD);
    expectClose(row.t2Unequal ?? NaN, unequal.t2);
    expectClose(row.df2Unequal ?? NaN, unequal.df2);
    expectClose(row.pUnequal ?? NaN, unequal.p);
  }
});

test('vectors leave out whom a guard stops: nobody under 18, pregnant or with a changed body', async () => {
  const { points } = await cohort.vectors(filterFor('ffm'));
  expect(points.map((point) => point.client)).not.toContain('OM-0133');
});

test('indices add up to the body mass index and mark whose value is held', async () => {
  const indices = await cohort.indices(filterFor('ffm'));
  expect(indices.length).toBeGreaterThan(400);
  expect(indices.find((point) => point.client === 'OM-0140')?.held).toBe(true);
  for (const point of indices) {
    const bmi = point.ffmi + point.fmi;
    expect([point.client, point.held]).toEqual([point.client, bmi < 17 - 1e-9 || bmi > 33.8 + 1e-9]);
  }
});
