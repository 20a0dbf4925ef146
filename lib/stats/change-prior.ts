/** Changes of people whose error is the same: how many, their mean, Σ(d − mean)² and V of each. */
export interface ChangeGroup {
  readonly n: number;
  readonly mean: number;
  readonly sumSquares: number;
  readonly variance: number;
}

/** What changes of a group of people say about a typical change: μ, and τ², the part of their spread that error leaves over. */
export interface ChangePrior {
  readonly n: number;
  readonly mean: number;
  readonly variance: number;
}

/**
 * Mean and variance of the changes behind measured ones, by moments: τ² = max(0, s_d² − mean V), μ = Σwd/Σw with
 * w = 1/(τ² + V).
 *
 * @param groups by V, so that unequal numbers of readings count as they are. @returns undefined for fewer than two people.
 * Source: normal–normal model, empirical Bayes by the method of moments.
 */
export const changePrior = (groups: readonly ChangeGroup[]): ChangePrior | undefined => {
  const n = groups.reduce((sum, group) => sum + group.n, 0);
  if (n < 2) return undefined;
  const plain = groups.reduce((sum, group) => sum + group.n * group.mean, 0) / n;
  const spread =
    groups.reduce((sum, group) => sum + group.sumSquares + group.n * (group.mean - plain) ** 2, 0) / (n - 1);
  const error = groups.reduce((sum, group) => sum + group.n * group.variance, 0) / n;
  const variance = Math.max(0, spread - error);
  const weights = groups.map((group) => group.n / (variance + group.variance));
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  if (!Number.isFinite(total)) return undefined;
  const mean = groups.reduce((sum, group, index) => sum + (weights[index] ?? 0) * group.mean, 0) / total;
  return { n, mean, variance };
};
