import { chiSquareQuantile } from './chi-square-quantile';
import { normalQuantile } from './normal-quantile';
import { tQuantile } from './t-quantile';

/**
 * How the uncertainty of PE enters a threshold. `conventional`: z at 30 or more degrees of freedom, t below.
 * `always-t`: t throughout. `cautious`: z times the one-sided 95 % upper limit of PE.
 */
export type ThresholdConvention = 'conventional' | 'always-t' | 'cautious';

/** Degrees of freedom from which the field's convention takes PE as known (30 people twice, or 15 three times). */
export const CONVENTIONAL_DF = 30;

/**
 * Factor f of LSC = f·√V.
 *
 * @param level two-sided confidence, for example 0.95. @param df degrees of freedom of PE.
 * Source: International Society for Clinical Densitometry for z·√2·PE at 30 df. The degrees of freedom are those of M
 * for every k, because Satterthwaite's would let a threshold rise with more readings.
 */
export const thresholdFactor = (
  level: number,
  df: number,
  convention: ThresholdConvention = 'conventional',
): number => {
  const probability = 1 - (1 - level) / 2;
  if (convention === 'cautious') return normalQuantile(probability) * Math.sqrt(df / chiSquareQuantile(0.05, df));
  return convention === 'conventional' && df >= CONVENTIONAL_DF
    ? normalQuantile(probability)
    : tQuantile(probability, df);
};
