/** Centre and limits of a chart of single readings. */
export interface IndividualsLimits {
  readonly n: number;
  readonly centre: number;
  /** Mean of |xᵢ − xᵢ₋₁|. */
  readonly movingRange: number;
  readonly lower: number;
  readonly upper: number;
}

/** d₂ of two values: the mean range of two normal values is 1.128·σ, as the table prints it. */
const D2 = 1.128;

/**
 * Limits of an individuals control chart from the mean moving range of two: x̄ ± 3·MR̄/1.128.
 *
 * @param readings in the order of time, in one unit. @returns undefined for fewer than two.
 * Source: NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2 (individuals control charts).
 */
export const individualsLimits = (readings: readonly number[]): IndividualsLimits | undefined => {
  const n = readings.length;
  if (n < 2) return undefined;
  const centre = readings.reduce((total, reading) => total + reading, 0) / n;
  const ranges = readings.slice(1).map((reading, index) => Math.abs(reading - (readings[index] ?? reading)));
  const movingRange = ranges.reduce((total, range) => total + range, 0) / ranges.length;
  const half = (3 * movingRange) / D2;
  return { n, centre, movingRange, lower: centre - half, upper: centre + half };
};
