/** Sums over a clinic's visits that hold all there is to know about its repeatability. They add across sites. */
export interface PrecisionSums {
  /** Σ(k−1)s² over visits with k ≥ 2 readings, in squared units of the value. */
  readonly sumWithin: number;
  /** ν_w = Σ(k−1). */
  readonly dfWithin: number;
  /** ΣΣ(ȳ_iv − ȳ_i)² over the visits of the between-day clusters, ȳ_i the unweighted mean of the visit means. */
  readonly sumBetween: number;
  /** ν_M = Σ(m_i − 1). */
  readonly dfBetween: number;
  /** Σ(m_i − 1)·mean(1/k_iv). Equal to dfBetween where every visit is a single reading. */
  readonly sumReciprocalReadings: number;
  /** δ²/12 with δ the recorded resolution, for measured and exported values; absent for computed values. */
  readonly floorVariance?: number;
}

/** Repositioning and day-to-day variance of one value, in squared units of that value. */
export interface VarianceComponents {
  /** s_w², variance of one repositioning, not below the floor. */
  readonly repositioning: number;
  readonly dfWithin: number;
  /** True where the resolution of the display, not the readings, gave `repositioning`. */
  readonly limitedByDisplay: boolean;
  /** The between-day part; undefined without any cluster of two days. */
  readonly between: BetweenDay | undefined;
}

/** What the clusters of visits within a week say. */
export interface BetweenDay {
  /** M, mean square of visit means within client. */
  readonly meanSquare: number;
  /** ν_M. */
  readonly df: number;
  /** h, the share of s_w² inside M. */
  readonly repositioningShare: number;
  /** s_b² = max(0, M − h·s_w²), day-to-day variance. */
  readonly dayToDay: number;
  /** True where all clusters are single readings and ν_w < 10: V = 2M for every k, replicates earn nothing yet. */
  readonly replicatesEarnNothing: boolean;
}

/** Below this many repositioning degrees of freedom a study of single readings cannot be split into its parts. */
const DF_TO_SPLIT_SINGLE_READINGS = 10;

/**
 * Two-component error of measurement by the method of moments: reading = client + change + day + repositioning.
 *
 * @returns undefined where neither replicate readings nor clusters exist.
 * Source: unweighted-means estimator of a nested random-effects model; E[M] = σ_b² + h·σ_w².
 */
export const varianceComponents = (sums: PrecisionSums): VarianceComponents | undefined => {
  const { dfWithin, dfBetween } = sums;
  if (dfWithin <= 0 && dfBetween <= 0) return undefined;
  const floor = sums.floorVariance ?? 0;
  const estimate = dfWithin > 0 ? sums.sumWithin / dfWithin : 0;
  const repositioning = Math.max(estimate, floor);
  const common = { repositioning, dfWithin, limitedByDisplay: floor > 0 && floor > estimate };
  if (dfBetween <= 0) return { ...common, between: undefined };
  const meanSquare = sums.sumBetween / dfBetween;
  const repositioningShare = sums.sumReciprocalReadings / dfBetween;
  const allSingle = repositioningShare > 1 - 1e-12;
  return {
    ...common,
    between: {
      meanSquare,
      df: dfBetween,
      repositioningShare,
      dayToDay: Math.max(0, meanSquare - repositioningShare * repositioning),
      replicatesEarnNothing: allSingle && dfWithin < DF_TO_SPLIT_SINGLE_READINGS,
    },
  };
};
