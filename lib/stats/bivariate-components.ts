import type { Covariance2 } from './bivariate';
import { matrixInMetric } from './matrix-in-metric';

/** Sums of squares and products of deviations, as `xx`, `xy`, `yy`. */
export type CrossSums = Covariance2;

/** The sums behind the error of two values together, x and y; what they count is said at `PrecisionSums`. */
export interface BivariatePrecisionSums {
  readonly within: CrossSums;
  readonly dfWithin: number;
  readonly between: CrossSums;
  readonly dfBetween: number;
  readonly sumReciprocalReadings: number;
}

/** The error of two values together, as covariance matrices in squared units. */
export interface BivariateComponents {
  /** S_w, one repositioning. */
  readonly repositioning: Covariance2;
  /** M, between the days of a cluster. */
  readonly meanSquare: Covariance2;
  /** ν_M. */
  readonly df: number;
  /** h, the share of S_w inside M. */
  readonly repositioningShare: number;
  /** Σ_b = M − h·S_w, made positive where the estimate is not. */
  readonly dayToDay: Covariance2;
  /** All clusters are single readings and ν_w < 10: V = 2M for every k. */
  readonly replicatesEarnNothing: boolean;
}

const DF_TO_SPLIT_SINGLE_READINGS = 10;

const scaled = (m: Covariance2, by: number): Covariance2 => ({ xx: m.xx * by, xy: m.xy * by, yy: m.yy * by });

/**
 * Two-component error of two values together by the method of moments, the matrix form of `varianceComponents`.
 *
 * @returns undefined without a cluster of two days.
 * Source: E[M] = Σ_b + h·Σ_w; negative eigenvalues are set to zero in the metric of S_w.
 */
export const bivariateComponents = (sums: BivariatePrecisionSums): BivariateComponents | undefined => {
  const { dfWithin, dfBetween } = sums;
  if (dfBetween <= 0) return undefined;
  const repositioning = dfWithin > 0 ? scaled(sums.within, 1 / dfWithin) : { xx: 0, xy: 0, yy: 0 };
  const meanSquare = scaled(sums.between, 1 / dfBetween);
  const repositioningShare = sums.sumReciprocalReadings / dfBetween;
  return {
    repositioning,
    meanSquare,
    df: dfBetween,
    repositioningShare,
    dayToDay: matrixInMetric(meanSquare, repositioning, (alpha) => Math.max(0, alpha - repositioningShare)),
    replicatesEarnNothing: repositioningShare > 1 - 1e-12 && dfWithin < DF_TO_SPLIT_SINGLE_READINGS,
  };
};
