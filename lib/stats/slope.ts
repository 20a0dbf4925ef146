/** One visit of a series: when, the value, and the variance of its error, σ_b² + σ_w²/k. */
export interface SeriesPoint {
  readonly days: number;
  readonly value: number;
  readonly variance: number;
}

/** A weighted slope with the error that measurement alone gives it. */
export interface Slope {
  /** In the value's unit per month of 30.4375 days. */
  readonly perMonth: number;
  readonly standardError: number;
  readonly dates: number;
  readonly days: number;
}

/** A month: a twelfth of a year of 365.25 days. */
export const DAYS_PER_MONTH = 30.4375;
const LEAST_DATES = 3;
const LEAST_DAYS = 28;

/**
 * Slope of a client's values by weighted least squares, weights 1/variance: b = Σw(t − t̄_w)y / Σw(t − t̄_w)², standard
 * error 1/√Σw(t − t̄_w)². Its threshold is f times that error.
 *
 * @param points one a date, in any order, days from any origin.
 * @returns undefined under three dates or 28 days, where a slope says nothing.
 * Source: weighted least squares with known variances, for example Draper and Smith, Applied Regression Analysis,
 * chapter on generalised least squares (from memory); checked against R's lm with weights.
 */
export const slope = (points: readonly SeriesPoint[]): Slope | undefined => {
  const times = points.map(({ days }) => days);
  const days = Math.max(...times) - Math.min(...times);
  const dates = new Set(times).size;
  if (dates < LEAST_DATES || !(days >= LEAST_DAYS)) return undefined;
  const weights = points.map(({ variance }) => 1 / variance);
  const months = times.map((time) => time / DAYS_PER_MONTH);
  const sum = (term: (index: number) => number): number => points.reduce((total, _, index) => total + term(index), 0);
  const weight = (index: number): number => weights[index] ?? 0;
  const centre = sum((index) => weight(index) * (months[index] ?? 0)) / sum(weight);
  const apart = (index: number): number => (months[index] ?? 0) - centre;
  const level = points[0]?.value ?? 0;
  const spread = sum((index) => weight(index) * apart(index) ** 2);
  const joint = sum((index) => weight(index) * apart(index) * ((points[index]?.value ?? 0) - level));
  return { perMonth: joint / spread, standardError: 1 / Math.sqrt(spread), dates, days };
};
