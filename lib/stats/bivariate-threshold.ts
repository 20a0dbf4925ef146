import { fQuantile } from './f-quantile';

/**
 * Constant c of the least significant change of two values together: a difference is beyond iff Δᵀ·V⁻¹·Δ ≥ c, with
 * c = 2ν/(ν − 1)·F(p; 2, ν − 1) and V estimated on ν degrees of freedom.
 *
 * @param level for example 0.95. @param df ν of the between-day matrix. @returns undefined for ν < 2.
 * Source: Hotelling’s T² for one difference and an independent covariance estimate (Anderson, chapter 5).
 */
export const bivariateThreshold = (level: number, df: number): number | undefined =>
  df < 2 ? undefined : ((2 * df) / (df - 1)) * fQuantile(level, 2, df - 1);
