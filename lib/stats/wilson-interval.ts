import { normalQuantile } from './normal-quantile';

/**
 * Wilson score interval of a share, without continuity correction.
 *
 * @param count successes, 0 ≤ count ≤ n. @param level two-sided confidence, default 0.95.
 * @returns [low, high] as fractions in [0, 1]; undefined for n = 0.
 * Source: method 3 of Newcombe, Stat Med 1998;17:857–872.
 */
export const wilsonInterval = (count: number, n: number, level = 0.95): readonly [number, number] | undefined => {
  if (n <= 0) return undefined;
  const z = normalQuantile(1 - (1 - level) / 2);
  const centre = count + (z * z) / 2;
  const half = z * Math.sqrt((count * (n - count)) / n + (z * z) / 4);
  const denominator = n + z * z;
  return [count === 0 ? 0 : (centre - half) / denominator, count === n ? 1 : (centre + half) / denominator];
};
