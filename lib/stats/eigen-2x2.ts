import type { Covariance2 } from './bivariate';

/** Eigenvalues, the larger first, and the direction of the first axis. */
export interface Eigen2x2 {
  readonly major: number;
  readonly minor: number;
  /** Direction of the major axis against the x axis, degrees in (−90, 90]; 0 where both eigenvalues are equal. */
  readonly angleDeg: number;
}

/**
 * Eigenvalues and principal direction of a symmetric 2 × 2 matrix in closed form; `minor` is det/major, which does not
 * cancel as the difference of two near-equal numbers would.
 */
export const eigen2x2 = ({ xx, xy, yy }: Covariance2): Eigen2x2 => {
  const major = (xx + yy + Math.hypot(xx - yy, 2 * xy)) / 2;
  const minor = major === 0 ? 0 : (xx * yy - xy * xy) / major;
  const angle = (Math.atan2(2 * xy, xx - yy) * 90) / Math.PI;
  return { major, minor, angleDeg: angle <= -90 ? 90 : angle };
};
