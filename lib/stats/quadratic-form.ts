import type { Covariance2, Vector2 } from './bivariate';

/** Below this share of the product of the variances a determinant, 1 − r², counts as zero. */
const SINGULAR = 1e-12;

/**
 * dᵀ S⁻¹ d for a 2 × 2 covariance: the squared Mahalanobis distance of a difference.
 *
 * @returns dimensionless; undefined where S is singular (a variance of zero, or |r| = 1).
 */
export const quadraticForm = ([x, y]: Vector2, { xx, xy, yy }: Covariance2): number | undefined => {
  const determinant = xx * yy - xy * xy;
  if (!(xx > 0 && yy > 0 && determinant > SINGULAR * xx * yy)) return undefined;
  return (x * x * yy - 2 * x * y * xy + y * y * xx) / determinant;
};
