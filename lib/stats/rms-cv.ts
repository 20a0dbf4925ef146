import type { Replicates } from './suggests-log-form';

/**
 * Root mean square coefficient of variation of replicates, per cent: 100·√(Σ(k−1)(s/x̄)²/Σ(k−1)). Descriptive only: no
 * threshold is made from it.
 *
 * @returns undefined without replicates, or where a mean is not above zero.
 * Source: Glüer CC et al. Osteoporos Int 1995;5:262–270.
 */
export const rmsCv = (people: readonly Replicates[]): number | undefined => {
  const df = people.reduce((total, { k }) => total + k - 1, 0);
  if (df <= 0 || people.some(({ mean }) => !(mean > 0))) return undefined;
  return 100 * Math.sqrt(people.reduce((total, { k, mean, sd }) => total + (k - 1) * (sd / mean) ** 2, 0) / df);
};
