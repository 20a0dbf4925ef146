/**
 * Variance of a change from an outside precision error (entered by the clinic, or published), never less than what
 * the clinic's own repositioning alone gives: max(2·PE², 2·s_w²).
 *
 * @param precisionError PE of one reading between days, in units of the value.
 * @param repositioning own s_w², where known.
 */
export const varianceNotBelowRepositioning = (precisionError: number, repositioning: number | undefined): number =>
  2 * Math.max(precisionError ** 2, repositioning ?? 0);
