import quantile from '@stdlib/stats-base-dists-t-quantile';

/**
 * Student t quantile: the t with P(T ≤ t) = p on `df` degrees of freedom.
 *
 * @param probability p in (0, 1).
 * @param df degrees of freedom, > 0; need not be whole.
 * Source: @stdlib; within 1e-9 relative of 40-digit values for df 0.5 to 1000 and p from 1e-20.
 */
export const tQuantile = (probability: number, df: number): number => quantile(probability, df);
