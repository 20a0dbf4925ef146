import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bestOfEarlierFactor } from '../../lib/stats/best-of-earlier-factor';
import { normalQuantile } from '../../lib/stats/normal-quantile';
import { ratioInterval } from '../../lib/stats/ratio-interval';
import { slope } from '../../lib/stats/slope';
import { expectClose, expectPrinted } from './expect-close';

const Z95 = normalQuantile(0.975);

describe('the slope of a series', () => {
  // Check values computed in R: lm(y ~ t, weights = 1/(0.25 + 0.09/k)), t in days/30.4375.
  test('has the weights of both components of error', () => {
    const values: readonly (readonly [number, number, number])[] = [
      [0, 2, 52.1],
      [30, 1, 51.6],
      [92, 2, 51.2],
      [181, 1, 50.3],
    ];
    const found = slope(values.map(([days, k, value]) => ({ days, value, variance: 0.25 + 0.09 / k })));
    expectClose(found?.perMonth, -0.288867323008);
    expectClose(found?.standardError, 0.125280500688);
    expectClose(Z95 * (found?.standardError ?? 0), 0.245545269314);
    expect(found).toMatchObject({ dates: 4, days: 181 });
  });

  test('of three evenly spaced visits has the threshold of first against last', () => {
    const found = slope([0, 90, 180].map((days) => ({ days, value: 50, variance: 0.36 })));
    expectClose(Z95 * (found?.standardError ?? 0), 0.281222984358);
    expectClose((Z95 * (found?.standardError ?? 0) * 180) / 30.4375, 1.663084589, 1e-9);
    expect(found?.perMonth).toBe(0);
  });

  test('is none under three dates or 28 days', () => {
    const at = (...days: readonly number[]) => slope(days.map((day) => ({ days: day, value: 1, variance: 1 })));
    expect(at(0, 90)).toBeUndefined();
    expect(at(0, 0, 90)).toBeUndefined();
    expect(at(0, 14, 27)).toBeUndefined();
    expect(at(0, 14, 28)).toBeDefined();
    expect(slope([])).toBeUndefined();
  });

  test('does not depend on where days and values are counted from, nor on the order', () => {
    const point = fc.record({
      days: fc.integer({ min: 0, max: 700 }),
      value: fc.double({ min: 30, max: 90, noNaN: true }),
      variance: fc.double({ min: 0.05, max: 2, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.uniqueArray(point, { minLength: 4, maxLength: 9, selector: ({ days }) => days }), (points) => {
        const first = slope(points);
        const moved = slope(
          [...points].reverse().map(({ days, value, variance }) => ({ days: days + 1000, value: value + 5, variance })),
        );
        if (first === undefined) return;
        expectClose(moved?.perMonth, first.perMonth, 1e-8, 1);
        expectClose(moved?.standardError, first.standardError, 1e-8);
      }),
      { seed: 4 },
    );
  });
});

describe('the interval of a ratio', () => {
  // 14 (SD 3) over 7 (SD 2), uncorrelated, t = 1.812461: worked example of DCPROGS/DCSTATS, limits 1.051413 and 4.414296.
  test('is that of a worked example', () => {
    const [lower, upper] = ratioInterval([14, 7], { xx: 9, xy: 0, yy: 4 }, 1.812461) ?? [];
    expectPrinted(lower, 1.051413, 5);
    expectPrinted(upper, 4.414296, 5);
  });

  // Means 14 and 7, SD 3 and 2, six each: 90, 95 and 99 % of a public calculator of quotients (Fieller), as printed by the same
  // project; t on 10 degrees of freedom.
  test.each([
    [1.8124611, 1.54, 2.64],
    [2.2281389, 1.46, 2.83],
    [3.1692727, 1.27, 3.36],
  ])('is that of a calculator at t = %f', (t, low, high) => {
    const [lower, upper] = ratioInterval([14, 7], { xx: 9 / 6, xy: 0, yy: 4 / 6 }, t) ?? [];
    expectPrinted(lower, low, 2);
    expectPrinted(upper, high, 2);
  });

  test('moves with the numerator: a + 3b has the example’s interval and 3 more, now with a covariance', () => {
    const [lower, upper] = ratioInterval([14 + 21, 7], { xx: 9 + 9 * 4, xy: 3 * 4, yy: 4 }, 1.812461) ?? [];
    expectPrinted(lower, 4.051413, 5);
    expectPrinted(upper, 7.414296, 5);
  });

  test('has ends at which the numerator less ρ times the denominator is just beyond its error', () => {
    const number = fc.double({ min: -20, max: 20, noNaN: true });
    const positive = fc.double({ min: 0.1, max: 3, noNaN: true });
    const correlation = fc.double({ min: -0.95, max: 0.95, noNaN: true });
    fc.assert(
      fc.property(number, number, positive, positive, correlation, (a, b, sdA, sdB, r) => {
        const variance = { xx: sdA ** 2, xy: r * sdA * sdB, yy: sdB ** 2 };
        const ends = ratioInterval([a, b], variance, Z95);
        if (Math.abs(b) <= Z95 * sdB) {
          expect(ends).toBeUndefined();
          return;
        }
        for (const ratio of ends ?? []) {
          const error = Z95 ** 2 * (variance.xx - 2 * ratio * variance.xy + ratio ** 2 * variance.yy);
          expectClose((a - ratio * b) ** 2, error, 1e-6, 1);
        }
        expect(ends?.[0]).toBeLessThanOrEqual(a / b + 1e-9 * Math.abs(a / b));
        expect(ends?.[1]).toBeGreaterThanOrEqual(a / b - 1e-9 * Math.abs(a / b));
      }),
      { seed: 5 },
    );
  });
});

describe('the factor against the best of earlier visits', () => {
  // Check values computed in R by integrate() and uniroot(), one-sided 2.5 %.
  test.each([
    [1, 2.7718076],
    [2, 3.1284315],
    [3, 3.3219539],
    [4, 3.4531912],
    [5, 3.5517497],
    [7, 3.6953458],
    [9, 3.7988958],
  ])('of %i is %f', (earlier, factor) => {
    expectPrinted(bestOfEarlierFactor(earlier, 0.025), factor, 7);
  });

  // One-sided sizes of the ordinary threshold against the best of m, simulated and by integrate() in R, to three digits.
  test.each([
    [2, 0.0454],
    [3, 0.0627],
    [4, 0.0779],
    [5, 0.0915],
    [7, 0.115],
    [9, 0.135],
  ])('of %i would be the ordinary one at a size of %f', (earlier, size) => {
    expect(Math.abs(bestOfEarlierFactor(earlier, size) - Z95 * Math.SQRT2)).toBeLessThan(0.01);
  });

  test('with one earlier visit is the ordinary threshold', () => {
    expectClose(bestOfEarlierFactor(1, 0.025), Z95 * Math.SQRT2, 1e-11);
    expectClose(bestOfEarlierFactor(1, 0.1), normalQuantile(0.9) * Math.SQRT2, 1e-11);
  });
});
