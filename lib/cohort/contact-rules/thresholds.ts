import type { AnyMeasureId } from '../../measures/measure-id';
import { thresholdFactor } from '../../stats/threshold-factor';
import { precisionFor } from '../group-precision';
import type { CohortErrors, PrecisionRow } from '../types/precision-row';

/** From this tier on a threshold is a lower limit or there is none: nobody is listed by it. */
const NO_RESULT_TIER = 5;

/** What the error study says of one value, where it says enough to list somebody. */
export interface Thresholds {
  /** f of the level in question. */
  readonly factor: number;
  /** Variance of one visit of k readings, squared units; in the log form at a value, to first order. */
  readonly variance: (k: number, at: number) => number;
  /** V(k₁,k₂) of a change; in the log form at the earlier value, to first order. */
  readonly changeVariance: (k1: number, k2: number, at: number) => number;
  /** The size that a fall from the earlier value has to reach: f·√V(k₁,k₂), in the log form x₁·(1 − e^−f√V). */
  readonly lsc: (k1: number, k2: number, from: number) => number;
  /** f of another level on the same degrees of freedom. */
  readonly factorAt: (level: number) => number;
  readonly df: number;
  readonly tier: PrecisionRow['tier'];
}

/**
 * The thresholds of a value at the level of these errors for visits of one group (null: of several, or of none); undefined
 * without a result or where they hang on the client's own values.
 */
export const thresholdsOf = (
  errors: CohortErrors,
  measure: AnyMeasureId,
  of: { readonly alwaysT: boolean; readonly group: string | null },
): Thresholds | undefined => {
  const { alwaysT, group } = of;
  const row = precisionFor(errors, measure, group);
  if (row === undefined || row.atOwnValues === true || row.tier >= NO_RESULT_TIER) return undefined;
  const { factor, twoBetween, within } = row;
  if (factor === null || twoBetween === null || within === null) return undefined;
  const df = row.outsideDf ?? row.dfBetween;
  const scale = (at: number): number => (row.form === 'log' ? at * at : 1);
  const root = (k1: number, k2: number): number => factor * Math.sqrt(twoBetween + within * (1 / k1 + 1 / k2));
  return {
    factor,
    variance: (k, at) => scale(at) * (twoBetween / 2 + within / k),
    changeVariance: (k1, k2, at) => scale(at) * (twoBetween + within * (1 / k1 + 1 / k2)),
    lsc: (k1, k2, from) => (row.form === 'log' ? from * -Math.expm1(-root(k1, k2)) : root(k1, k2)),
    factorAt: (level) =>
      thresholdFactor(level, df, alwaysT && !(row.tier === 1 && row.provisional) ? 'always-t' : 'conventional'),
    df,
    tier: row.tier,
  };
};
