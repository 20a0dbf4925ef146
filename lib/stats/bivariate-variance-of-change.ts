import type { Covariance2 } from './bivariate';
import type { BivariateComponents } from './bivariate-components';
import { matrixInMetric } from './matrix-in-metric';

/**
 * Covariance of the difference of two visits of k₁ and k₂ readings when nothing changed: V = 2·Σ_b + S_w·(1/k₁ + 1/k₂).
 * Where replicates earn nothing yet V = 2M, in no direction less than 2·S_w.
 */
export const bivariateVarianceOfChange = (
  components: BivariateComponents,
  readings1: number,
  readings2: number,
): Covariance2 => {
  const { dayToDay, repositioning, meanSquare } = components;
  if (components.replicatesEarnNothing) {
    const least = matrixInMetric(meanSquare, repositioning, (alpha) => Math.max(1, alpha));
    return { xx: 2 * least.xx, xy: 2 * least.xy, yy: 2 * least.yy };
  }
  const share = 1 / readings1 + 1 / readings2;
  return {
    xx: 2 * dayToDay.xx + share * repositioning.xx,
    xy: 2 * dayToDay.xy + share * repositioning.xy,
    yy: 2 * dayToDay.yy + share * repositioning.yy,
  };
};
