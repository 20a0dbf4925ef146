import type { BivariateSample, Vector2 } from './bivariate';

/** Number of pairs, their mean, and centred sums of squares and products. */
export interface BivariateSums {
  readonly n: number;
  readonly mean: Vector2;
  /** Σ(x − x̄)². */
  readonly sxx: number;
  /** Σ(x − x̄)(y − ȳ). */
  readonly sxy: number;
  /** Σ(y − ȳ)². */
  readonly syy: number;
}

/** Mean and covariance of a sample from its centred sums; undefined for n < 2. */
export const covarianceFromSums = (sums: BivariateSums): BivariateSample | undefined => {
  if (sums.n < 2) return undefined;
  const df = sums.n - 1;
  return { n: sums.n, mean: sums.mean, cov: { xx: sums.sxx / df, xy: sums.sxy / df, yy: sums.syy / df } };
};
