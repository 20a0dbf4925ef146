import { tUpperTail } from './t-upper-tail';

/** Two-sided p of a t statistic: P(|T| ≥ |t|) on `df` degrees of freedom. */
export const tTwoSidedP = (t: number, df: number): number => 2 * tUpperTail(Math.abs(t), df);
