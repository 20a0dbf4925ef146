import type { Covariance2, Vector2 } from './bivariate';

/**
 * Fieller's interval of a ratio of two normal estimates: all ρ with (a − ρb)² ≤ f²·(v₁₁ − 2ρv₁₂ + ρ²v₂₂).
 *
 * @param estimate numerator a and denominator b. @param variance of the two: xx of a, yy of b, xy their covariance.
 * @param factor f, z or t of the level. @returns [lower, upper] in the unit of a/b; undefined where b is not beyond its
 * own error: then no bounded interval exists.
 * Source: Fieller EC, J R Stat Soc B 1954;16:175–185.
 */
export const ratioInterval = (
  [a, b]: Vector2,
  { xx, xy, yy }: Covariance2,
  factor: number,
): readonly [number, number] | undefined => {
  const squared = factor * factor;
  const lead = b * b - squared * yy;
  if (!(lead > 0)) return undefined;
  const middle = a * b - squared * xy;
  const root = Math.sqrt(Math.max(0, middle * middle - lead * (a * a - squared * xx)));
  return [(middle - root) / lead, (middle + root) / lead];
};
