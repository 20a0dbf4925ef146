import type { Covariance2, Vector2 } from './bivariate';

/** Size of a part in SD units, and its variance by error of measurement alone. */
export interface AxisPart {
  readonly value: number;
  readonly variance: number;
}

export interface FluidAndCell {
  /** f > 0: a longer vector. */
  readonly fluid: AxisPart;
  /** m > 0: a steeper vector. */
  readonly cell: AxisPart;
}

/**
 * A vector change along two fixed axes of the SD plane: f = (Δz_R + Δz_X)/√(2(1 + r)), m = (Δz_X − Δz_R)/√(2(1 − r)).
 * f² + m² is the squared Mahalanobis distance of the change in the reference.
 *
 * @param change (ΔR/H, ΔXc/H) in Ω/m. @param error its covariance by error of measurement, V(k₁, k₂).
 * @param reference covariance of people, which gives the SD units and r.
 * @returns undefined where the reference is singular.
 */
export const fluidAndCellAxes = (
  [dx, dy]: Vector2,
  error: Covariance2,
  reference: Covariance2,
): FluidAndCell | undefined => {
  if (!(reference.xx > 0 && reference.yy > 0)) return undefined;
  const [sx, sy] = [Math.sqrt(reference.xx), Math.sqrt(reference.yy)];
  const r = reference.xy / (sx * sy);
  if (!(Math.abs(r) < 1 - 1e-12)) return undefined;
  const part = (sign: 1 | -1): AxisPart => {
    const scale = 2 * (1 + sign * r);
    return {
      value: (dy / sy + (sign * dx) / sx) / Math.sqrt(scale),
      variance: (error.xx / reference.xx + error.yy / reference.yy + (2 * sign * error.xy) / (sx * sy)) / scale,
    };
  };
  return { fluid: part(1), cell: part(-1) };
};
