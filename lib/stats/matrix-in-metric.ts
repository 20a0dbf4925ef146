import type { Covariance2 } from './bivariate';
import { eigen2x2 } from './eigen-2x2';

/**
 * M with its eigenvalues in the units of S changed: L·Q·diag(change(α))·Qᵀ·Lᵀ with S = L·Lᵀ and L⁻¹·M·L⁻ᵀ = Q·diag(α)·Qᵀ.
 * Free of the units of x and y. M itself where S is not positive definite.
 */
export const matrixInMetric = (m: Covariance2, s: Covariance2, change: (alpha: number) => number): Covariance2 => {
  const a = Math.sqrt(s.xx);
  const c = s.xy / a;
  const rest = s.yy - c * c;
  if (!(s.xx > 0 && rest > 1e-12 * s.yy)) return m;
  const d = Math.sqrt(rest);
  const xx = m.xx / (a * a);
  const xy = (m.xy - (c * m.xx) / a) / (a * d);
  const yy = (m.yy - (2 * c * m.xy) / a + (c * c * m.xx) / (a * a)) / (d * d);
  const { major, minor, angleDeg } = eigen2x2({ xx, xy, yy });
  const [p, q] = [change(major), change(minor)];
  const [cos, sin] = [Math.cos((angleDeg * Math.PI) / 180), Math.sin((angleDeg * Math.PI) / 180)];
  const e = { xx: p * cos * cos + q * sin * sin, xy: (p - q) * cos * sin, yy: p * sin * sin + q * cos * cos };
  return {
    xx: a * a * e.xx,
    xy: a * c * e.xx + a * d * e.xy,
    yy: c * c * e.xx + 2 * c * d * e.xy + d * d * e.yy,
  };
};
