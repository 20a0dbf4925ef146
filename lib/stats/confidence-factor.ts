import { fQuantile } from './f-quantile';

/**
 * Constant c of the confidence ellipse D² ≤ c of a bivariate mean: 2(n − 1)/(n(n − 2))·F(p; 2, n − 2), with D² by
 * the covariance of single individuals.
 *
 * @returns undefined for n < 3.
 */
export const confidenceFactor = (n: number, probability: number): number | undefined =>
  n < 3 ? undefined : ((2 * (n - 1)) / (n * (n - 2))) * fQuantile(probability, 2, n - 2);
