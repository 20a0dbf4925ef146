import { quantileSorted } from 'simple-statistics';

/**
 * Sample quantile of type 7 (linear interpolation between order statistics at 1 + (n − 1)p), the one that R's default,
 * DuckDB's `quantile_cont` and PostgreSQL's `percentile_cont` give.
 *
 * @param values finite numbers in any order. @param probability p in [0, 1].
 * @returns undefined for no values.
 * Source: Hyndman & Fan, Am Stat 1996;50:361–365, definition 7.
 */
export const quantileType7 = (values: readonly number[], probability: number): number | undefined =>
  values.length === 0
    ? undefined
    : quantileSorted(
        [...values].sort((a, b) => a - b),
        probability,
      );
