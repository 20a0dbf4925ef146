import { fQuantile } from './f-quantile';

/**
 * Constant c of a prediction ellipse D² ≤ c that holds one new individual with probability p on average:
 * 2(n² − 1)/(n(n − 2))·F(p; 2, n − 2).
 *
 * @param n size of the reference sample. @returns undefined for n < 3.
 */
export const predictionFactor = (n: number, probability: number): number | undefined =>
  n < 3 ? undefined : ((2 * (n * n - 1)) / (n * (n - 2))) * fQuantile(probability, 2, n - 2);
