import type { Covariance2, Vector2 } from './bivariate';
import { quadraticForm } from './quadratic-form';

/** Mahalanobis distance D of a point from a mean, √((x − x̄)ᵀ S⁻¹ (x − x̄)); undefined where S is singular. */
export const mahalanobis = (point: Vector2, mean: Vector2, cov: Covariance2): number | undefined => {
  const squared = quadraticForm([point[0] - mean[0], point[1] - mean[1]], cov);
  return squared === undefined ? undefined : Math.sqrt(squared);
};
