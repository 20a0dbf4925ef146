import { fUpperTail } from './f-upper-tail';

/** Whether changes vary more than the error of a change explains. */
export interface ChangeSpread {
  /** F = s_d² / mean V on (n − 1, ν) degrees of freedom. */
  readonly f: number;
  /** Upper tail. */
  readonly p: number;
  /** SD of the true changes, √max(0, s_d² − mean V), in the value's unit. */
  readonly trueSd: number;
}

/**
 * The spread of n people's changes against the variance that error alone gives a change.
 *
 * @param variance s_d², squared unit. @param errorVariance mean V, squared unit, > 0. @param n people. @param df ν of the error.
 * @returns undefined for fewer than two people or without an error.
 * Source: ratio of two independent variances (NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.9).
 */
export const changeSpread = (
  variance: number,
  errorVariance: number,
  n: number,
  df: number,
): ChangeSpread | undefined => {
  if (n < 2 || !(errorVariance > 0)) return undefined;
  const f = variance / errorVariance;
  return { f, p: fUpperTail(f, n - 1, df), trueSd: Math.sqrt(Math.max(0, variance - errorVariance)) };
};
