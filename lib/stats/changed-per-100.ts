import { chiSquareQuantile } from './chi-square-quantile';
import { normalUpperTail } from './normal-upper-tail';

/**
 * Of 100 unchanged people, how many a clinic's threshold calls changed: the 95 % range that its estimated precision
 * error leaves, 100·2Φ(−f·√(χ²(q, ν)/ν)) with q = 0.975 and 0.025.
 *
 * @param factor f that multiplies √V. @param df ν of the precision error.
 * @returns [lowest, highest], people in 100.
 */
export const changedPer100 = (factor: number, df: number): readonly [number, number] => {
  const at = (q: number): number => 200 * normalUpperTail(factor * Math.sqrt(chiSquareQuantile(q, df) / df));
  return [at(0.975), at(0.025)];
};
