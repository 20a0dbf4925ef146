import { type ThresholdConvention, thresholdFactor } from './threshold-factor';

/**
 * Least significant change LSC = f·√V: the smallest change that is more than error of measurement.
 *
 * @param variance V of the change, squared units of the value.
 * @param level two-sided confidence. @param df degrees of freedom of PE.
 * @returns units of the value.
 */
export const leastSignificantChange = (
  variance: number,
  level: number,
  df: number,
  convention: ThresholdConvention = 'conventional',
): number => thresholdFactor(level, df, convention) * Math.sqrt(variance);
