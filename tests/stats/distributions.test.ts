import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chiSquareQuantile } from '../../lib/stats/chi-square-quantile';
import { chiSquareUpperTail } from '../../lib/stats/chi-square-upper-tail';
import { fQuantile } from '../../lib/stats/f-quantile';
import { fUpperTail } from '../../lib/stats/f-upper-tail';
import { normalCdf } from '../../lib/stats/normal-cdf';
import { normalQuantile } from '../../lib/stats/normal-quantile';
import { normalUpperTail } from '../../lib/stats/normal-upper-tail';
import { tQuantile } from '../../lib/stats/t-quantile';
import { tTwoSidedP } from '../../lib/stats/t-two-sided-p';
import { tUpperTail } from '../../lib/stats/t-upper-tail';
import { expectClose } from './expect-close';

const probability = fc.double({ min: 1e-6, max: 0.999999, noNaN: true });
const df = fc.integer({ min: 1, max: 900 });

describe('distributions', () => {
  it('give a tail far below the smallest step of one', () => {
    expect(tUpperTail(40, 100)).toBeGreaterThan(0);
    expect(tUpperTail(40, 100)).toBeLessThan(1e-60);
    expect(fUpperTail(300, 2, 200)).toBeGreaterThan(0);
    expect(chiSquareUpperTail(400, 2)).toBeGreaterThan(0);
    expect(normalUpperTail(30)).toBeGreaterThan(0);
  });

  it('have a closed form on two degrees of freedom', () => {
    expectClose(chiSquareUpperTail(400, 2), Math.exp(-200));
    expectClose(fUpperTail(50, 2, 10), (1 + 10) ** -5);
    expectClose(tUpperTail(3, 2), (1 - 3 / Math.sqrt(11)) / 2, 1e-12);
    expectClose(tUpperTail(1e-7, 2), (1 - 1e-7 / Math.sqrt(2)) / 2, 1e-13);
  });

  it('return to the probability from the quantile', () => {
    fc.assert(
      fc.property(probability, df, df, (p, df1, df2) => {
        expectClose(1 - p, normalUpperTail(normalQuantile(p)), 1e-8);
        expectClose(1 - p, tUpperTail(tQuantile(p, df1), df1), 1e-8);
        expectClose(1 - p, chiSquareUpperTail(chiSquareQuantile(p, df1), df1), 1e-8);
        expectClose(1 - p, fUpperTail(fQuantile(p, df1, df2), df1, df2), 1e-8);
      }),
      { numRuns: 200, seed: 11 },
    );
  });

  it('are symmetric where theory says so', () => {
    expectClose(normalCdf(-1.3) + normalCdf(1.3), 1, 1e-15);
    expectClose(tUpperTail(-1.3, 7), 1 - tUpperTail(1.3, 7), 1e-15);
    expect(tTwoSidedP(-2.1, 9)).toBe(tTwoSidedP(2.1, 9));
    expectClose(tTwoSidedP(2.1, 9), fUpperTail(2.1 ** 2, 1, 9), 1e-12);
  });

  it('give the whole probability below zero and none at infinity', () => {
    expect([fUpperTail(0, 2, 9), fUpperTail(-1, 2, 9), chiSquareUpperTail(0, 3)]).toEqual([1, 1, 1]);
    expect([fUpperTail(Infinity, 2, 9), tUpperTail(Infinity, 3)]).toEqual([0, 0]);
  });

  it('refuse a χ² tail where the library is wrong', () => {
    expect(() => chiSquareUpperTail(2031, 2000)).toThrow(RangeError);
  });

  it('join the two ways to a χ² quantile without a step', () => {
    for (const p of [0.025, 0.05, 0.5, 0.975]) {
      const below = chiSquareQuantile(p, 1000) - chiSquareQuantile(p, 999);
      const across = chiSquareQuantile(p, 1001) - chiSquareQuantile(p, 1000);
      expect(Math.abs(across - below)).toBeLessThan(1e-4);
    }
  });
});
