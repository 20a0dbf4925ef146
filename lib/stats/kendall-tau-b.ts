import { normalUpperTail } from './normal-upper-tail';

export interface KendallTauB {
  readonly tau: number;
  /** Normal approximation with the variance for ties, no continuity correction. */
  readonly z: number;
  /** P(Z ≥ z): small where the two rise together. */
  readonly oneSidedP: number;
  readonly twoSidedP: number;
}

/** Sums over the groups of equal values: Σt(t−1), Σt(t−1)(2t+5), Σt(t−1)(t−2). */
const tieSums = (values: readonly number[]): readonly [number, number, number] => {
  const counts = new Map<number, number>();
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1);
  let [pairs, variance, triples] = [0, 0, 0];
  for (const t of counts.values()) {
    pairs += t * (t - 1);
    variance += t * (t - 1) * (2 * t + 5);
    triples += t * (t - 1) * (t - 2);
  }
  return [pairs, variance, triples];
};

/**
 * Kendall's τ-b of two series of equal length, with its normal test.
 *
 * @returns undefined for fewer than three pairs, or where one series is constant.
 * Source: Kendall, Rank Correlation Methods; the same as R's `cor.test(method = "kendall", exact = FALSE)`.
 */
export const kendallTauB = (xs: readonly number[], ys: readonly number[]): KendallTauB | undefined => {
  const n = Math.min(xs.length, ys.length);
  if (n < 3) return undefined;
  const at = (values: readonly number[], index: number): number => values[index] ?? Number.NaN;
  let score = 0;
  for (let i = 1; i < n; i += 1) {
    for (let j = 0; j < i; j += 1) score += Math.sign(at(xs, i) - at(xs, j)) * Math.sign(at(ys, i) - at(ys, j));
  }
  const [xPairs, xVariance, xTriples] = tieSums(xs.slice(0, n));
  const [yPairs, yVariance, yTriples] = tieSums(ys.slice(0, n));
  const pairs = n * (n - 1);
  if (xPairs === pairs || yPairs === pairs) return undefined;
  const tau = score / Math.sqrt(((pairs - xPairs) / 2) * ((pairs - yPairs) / 2));
  const variance =
    (pairs * (2 * n + 5) - xVariance - yVariance) / 18 +
    (xPairs * yPairs) / (2 * pairs) +
    (xTriples * yTriples) / (9 * pairs * (n - 2));
  const z = score / Math.sqrt(variance);
  return { tau, z, oneSidedP: normalUpperTail(z), twoSidedP: 2 * normalUpperTail(Math.abs(z)) };
};
