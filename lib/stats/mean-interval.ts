import { tQuantile } from './t-quantile';

/**
 * t interval of a mean from n, mean and standard deviation (n − 1 in the denominator).
 *
 * @param level two-sided confidence, default 0.95.
 * @returns [low, high] in the unit of the mean; undefined for n < 2.
 */
export const meanInterval = (
  sample: { readonly n: number; readonly mean: number; readonly sd: number },
  level = 0.95,
): readonly [number, number] | undefined => {
  const { n, mean, sd } = sample;
  if (n < 2) return undefined;
  const half = (tQuantile(1 - (1 - level) / 2, n - 1) * sd) / Math.sqrt(n);
  return [mean - half, mean + half];
};
