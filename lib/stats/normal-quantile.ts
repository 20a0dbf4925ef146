import quantile from '@stdlib/stats-base-dists-normal-quantile';

/**
 * Standard normal quantile z with Φ(z) = p.
 *
 * @param probability p in (0, 1); 0 and 1 give ∓Infinity, anything outside NaN.
 * Source: @stdlib, within 1e-9 relative of R 4.2.2 `qnorm`. For small upper tails use −normalQuantile(tail).
 */
export const normalQuantile = (probability: number): number => quantile(probability, 0, 1);
