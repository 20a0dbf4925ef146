import type { Covariance2, Vector2 } from './bivariate';
import { eigen2x2 } from './eigen-2x2';
import { quadraticForm } from './quadratic-form';

/** An ellipse ready to draw, in data units. */
export interface Ellipse {
  readonly cx: number;
  readonly cy: number;
  /** Semi-major axis. */
  readonly a: number;
  /** Semi-minor axis. */
  readonly b: number;
  /** Direction of the major axis against the x axis, degrees in (−90, 90]. */
  readonly angleDeg: number;
}

/**
 * The set D² = c around a mean: semi-axes √(c·λ).
 *
 * @param shape.factor c of `predictionFactor`, `confidenceFactor` or `chiSquareFactor`.
 * @returns undefined where there is no factor (n < 3) or the covariance is singular.
 */
export const ellipse = (shape: {
  readonly mean: Vector2;
  readonly cov: Covariance2;
  readonly factor: number | undefined;
}): Ellipse | undefined => {
  if (shape.factor === undefined || quadraticForm([0, 0], shape.cov) === undefined) return undefined;
  const { major, minor, angleDeg } = eigen2x2(shape.cov);
  return {
    cx: shape.mean[0],
    cy: shape.mean[1],
    a: Math.sqrt(shape.factor * major),
    b: Math.sqrt(shape.factor * minor),
    angleDeg,
  };
};
