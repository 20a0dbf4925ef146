import { tUpperTail } from './t-upper-tail';

/**
 * Confidence from error alone that a change has the direction it shows: T_ν(|d|/√V), Student’s t distribution function.
 * It looks at nothing but the error of measurement: never below one half, and blind to how a client was picked out.
 *
 * @param change d. @param variance V of the difference. @param df ν of V.
 * @returns 0.5–1; undefined where there is no variance.
 */
export const confidenceFromError = (change: number, variance: number, df: number): number | undefined =>
  variance > 0 && df > 0 ? 1 - tUpperTail(Math.abs(change) / Math.sqrt(variance), df) : undefined;
