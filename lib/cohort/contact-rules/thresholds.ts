import type { AnyMeasureId } from '../../measures/measure-id';
import { thresholdFactor } from '../../stats/threshold-factor';
import type { PrecisionRow } from '../types/precision-row';

/** From this tier on a threshold is a lower limit or there is none: nobody is listed by it. */
const NO_RESULT_TIER = 5;

/** What the error study says of one value, where it says enough to list somebody. */
export interface Thresholds {
  /** f of the level in question. */
  readonly factor: number;
  /** Variance of one visit of k readings, squared units. */
  readonly variance: (k: number) => number;
  /** V(k₁,k₂) of a change. */
  readonly changeVariance: (k1: number, k2: number) => number;
  /** f·√V(k₁,k₂). */
  readonly lsc: (k1: number, k2: number) => number;
  /** f of another level on the same degrees of freedom. */
  readonly factorAt: (level: number) => number;
  readonly df: number;
  readonly tier: PrecisionRow['tier'];
}

/** The thresholds of a value at the level of these rows; undefined without a result or where they hang on the client's height. */
export const thresholdsOf = (
  precision: readonly PrecisionRow[],
  measure: AnyMeasureId,
  alwaysT: boolean,
): Thresholds | undefined => {
  const row = precision.find((entry) => entry.measure === measure);
  if (row === undefined || row.perHeight === true || row.tier >= NO_RESULT_TIER) return undefined;
  const { factor, twoBetween, within } = row;
  if (factor === null || twoBetween === null || within === null) return undefined;
  const df = row.outsideDf ?? row.dfBetween;
  const changeVariance = (k1: number, k2: number): number => twoBetween + within * (1 / k1 + 1 / k2);
  return {
    factor,
    variance: (k) => twoBetween / 2 + within / k,
    changeVariance,
    lsc: (k1, k2) => factor * Math.sqrt(changeVariance(k1, k2)),
    factorAt: (level) =>
      thresholdFactor(level, df, alwaysT && !(row.tier === 1 && row.provisional) ? 'always-t' : 'conventional'),
    df,
    tier: row.tier,
  };
};
