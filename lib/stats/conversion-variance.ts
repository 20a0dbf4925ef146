/** What people measured on both devices leave after conversion. */
export interface ConversionResidual {
  readonly n: number;
  /** Σd² of (own − converted), squared units of the value. */
  readonly sumOfSquares: number;
  /** s_w² of one reading. */
  readonly repositioning: number;
  /** Mean of 1/k₁ + 1/k₂ over the people. */
  readonly reciprocalReadings: number;
}

/**
 * What a conversion between two devices adds to the variance of a change across them:
 * s²/n + max(0, s² − s_w²·mean(1/k₁ + 1/k₂)), with s² = Σd²/(n − 1) about zero. The first part is the error of the mean
 * difference, the second how differently the two devices measure different people; repositioning is in the variance
 * of the change already.
 *
 * @returns squared units of the value; undefined for fewer than two people.
 * Source: Bland JM, Altman DG. Stat Methods Med Res 1999;8:135–160, variance of the difference of two methods with
 * replicates; the sum is the prediction variance of a new person's difference without repositioning.
 */
export const conversionVariance = (residual: ConversionResidual): number | undefined => {
  const { n, sumOfSquares, repositioning, reciprocalReadings } = residual;
  if (n < 2) return undefined;
  const square = sumOfSquares / (n - 1);
  return square / n + Math.max(0, square - repositioning * reciprocalReadings);
};
