/** A point or difference in the plane, (x, y); in vector analysis R/H and Xc/H in Ω/m. */
export type Vector2 = readonly [number, number];

/** A symmetric 2 × 2 covariance matrix in squared units. */
export interface Covariance2 {
  readonly xx: number;
  readonly xy: number;
  readonly yy: number;
}

/** The sufficient statistics of a bivariate normal sample: covariance with n − 1 in the denominator. */
export interface BivariateSample {
  readonly n: number;
  readonly mean: Vector2;
  readonly cov: Covariance2;
}
