/** A change against its threshold; `within` means that error of measurement explains it. */
export type Beyond = 'up' | 'down' | 'within';

/**
 * Whether the change from `earlier` to `later` is at least the threshold. No difference is never beyond, and a
 * difference that equals the threshold is, whatever binary rounding does to it.
 *
 * @param threshold LSC ≥ 0, in the unit of both values.
 */
export const beyondThreshold = (earlier: number, later: number, threshold: number): Beyond => {
  const change = later - earlier;
  const tolerance = 1e-9 * Math.max(Math.abs(earlier), Math.abs(later), threshold);
  if (change === 0 || !(Math.abs(change) >= threshold - tolerance)) return 'within';
  return change > 0 ? 'up' : 'down';
};
