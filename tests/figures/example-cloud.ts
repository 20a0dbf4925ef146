import type { Ellipse } from '../../lib/figures/ellipse';
import type { ScatterPoint } from '../../lib/figures/scatter';
import { seededNormal } from './seeded';

export interface Cloud {
  readonly at: readonly [number, number];
  readonly spread: readonly [number, number];
  readonly correlation: number;
}

/** People around a mean, from a seed. */
export const cloud = (prefix: string, n: number, { at, spread, correlation }: Cloud, seed: number): ScatterPoint[] => {
  const normal = seededNormal(seed);
  return Array.from({ length: n }, (_, index) => {
    const first = normal();
    const second = correlation * first + Math.sqrt(1 - correlation ** 2) * normal();
    const x = at[0] + spread[0] * first;
    const y = at[1] + spread[1] * second;
    return { key: `${prefix}-${index}`, x, y, label: `${prefix}-${index}` };
  });
};

/** The ellipse of all points at squared distance `c` by a sample's own mean and covariance. */
export const ellipseOf = (points: readonly ScatterPoint[], c: number): Ellipse => {
  const n = points.length;
  const cx = points.reduce((sum, point) => sum + point.x, 0) / n;
  const cy = points.reduce((sum, point) => sum + point.y, 0) / n;
  const moment = (of: (point: ScatterPoint) => number): number =>
    points.reduce((sum, point) => sum + of(point), 0) / (n - 1);
  const xx = moment((point) => (point.x - cx) ** 2);
  const yy = moment((point) => (point.y - cy) ** 2);
  const xy = moment((point) => (point.x - cx) * (point.y - cy));
  const root = Math.hypot((xx - yy) / 2, xy);
  const angleDeg = (Math.atan2(2 * xy, xx - yy) / 2) * (180 / Math.PI);
  const middle = (xx + yy) / 2;
  return { cx, cy, a: Math.sqrt(c * (middle + root)), b: Math.sqrt(c * (middle - root)), angleDeg };
};
