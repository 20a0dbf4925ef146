import type { BivariateSample, Vector2 } from './bivariate';
import { fUpperTail } from './f-upper-tail';
import { quadraticForm } from './quadratic-form';

/** A Hotelling T² test of bivariate means. */
export interface HotellingTest {
  readonly t2: number;
  readonly f: number;
  readonly df1: 2;
  readonly df2: number;
  readonly p: number;
  /** Mahalanobis distance D of the two means, by the covariance of single individuals. */
  readonly mahalanobisD: number;
}

/**
 * One-sample Hotelling T² of a bivariate mean against a fixed vector: T² = n·dᵀS⁻¹d, F = T²(n − 2)/(2(n − 1)) on
 * (2, n − 2).
 *
 * @returns undefined for n < 3 or a singular covariance.
 * Source: Johnson & Wichern, Applied Multivariate Statistical Analysis.
 */
export const hotellingOneSample = ({ n, mean, cov }: BivariateSample, against: Vector2): HotellingTest | undefined => {
  const squared = quadraticForm([mean[0] - against[0], mean[1] - against[1]], cov);
  if (n < 3 || squared === undefined) return undefined;
  const t2 = n * squared;
  const f = (t2 * (n - 2)) / (2 * (n - 1));
  return { t2, f, df1: 2, df2: n - 2, p: fUpperTail(f, 2, n - 2), mahalanobisD: Math.sqrt(squared) };
};
