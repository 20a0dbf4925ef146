import quantile from '@stdlib/stats-base-dists-normal-quantile';

/**
 * Standard normal quantile z with Φ(z) = p.
 *
 * @param probability p in (0, 1); 0 and 1 give ∓Infinity, anything outside NaN.
 * Source: @stdlib; within 1e-9 relative of R 4.2.2 `qnorm` for p between 1e-8 and 1 − 1e-8. Further out the library
 * loses digits in 2p − 1.
 */
export const normalQuantile = (probability: number): number => quantile(probability, 0, 1);
