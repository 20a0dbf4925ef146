import type { BivariateSample } from './bivariate';
import { fUpperTail } from './f-upper-tail';
import type { HotellingTest } from './hotelling-one-sample';
import { quadraticForm } from './quadratic-form';

/**
 * Two-sample Hotelling T² with pooled covariance: F = T²(n₁ + n₂ − 3)/(2(n₁ + n₂ − 2)) on (2, n₁ + n₂ − 3). Only within
 * one sex, or on vectors standardised by sex.
 *
 * @returns undefined where a sample has fewer than 2, both together fewer than 4, or S is singular.
 * Source: Johnson & Wichern, Applied Multivariate Statistical Analysis.
 */
export const hotellingTwoSample = (a: BivariateSample, b: BivariateSample): HotellingTest | undefined => {
  const df = a.n + b.n - 2;
  if (a.n < 2 || b.n < 2 || df < 2) return undefined;
  const pool = (ofA: number, ofB: number): number => ((a.n - 1) * ofA + (b.n - 1) * ofB) / df;
  const pooled = { xx: pool(a.cov.xx, b.cov.xx), xy: pool(a.cov.xy, b.cov.xy), yy: pool(a.cov.yy, b.cov.yy) };
  const squared = quadraticForm([a.mean[0] - b.mean[0], a.mean[1] - b.mean[1]], pooled);
  if (squared === undefined) return undefined;
  const t2 = ((a.n * b.n) / (a.n + b.n)) * squared;
  const f = (t2 * (df - 1)) / (2 * df);
  return { t2, f, df1: 2, df2: df - 1, p: fUpperTail(f, 2, df - 1), mahalanobisD: Math.sqrt(squared) };
};
