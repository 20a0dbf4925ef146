import { c4 } from './c4';
import { kendallTauB, type KendallTauB } from './kendall-tau-b';
import { CONVENTIONAL_DF } from './threshold-factor';

/** What was measured again on one person: k values of one kind, their mean and SD. */
export interface Replicates {
  readonly k: number;
  readonly mean: number;
  /** SD of the k values, n − 1 in the denominator. */
  readonly sd: number;
}

/** Whether the error grows with the value. */
export interface LogFormTest {
  readonly kendall: KendallTauB;
  readonly df: number;
  /** RMS-SD of the upper half of the means over that of the lower half; null where the lower half has none. */
  readonly ratio: number | null;
  /** τ > 0 with one-sided p < 0.01, ≥ 30 df, a ratio of at least 1.5 and no value ≤ 0. Suggested, never chosen. */
  readonly suggested: boolean;
}

const P_LIMIT = 0.01;
const RATIO_LIMIT = 1.5;

const pooledSd = (people: readonly Replicates[]): number => {
  const df = people.reduce((total, { k }) => total + k - 1, 0);
  return Math.sqrt(people.reduce((total, { k, sd }) => total + (k - 1) * sd * sd, 0) / df);
};

/**
 * Tests whether a log form of the error should be suggested: τ-b of sd/c₄(k) with the mean, and the ratio of the error in
 * the upper half of the means to that in the lower half (the middle one of an odd number belongs to neither).
 *
 * @returns undefined where τ is not defined.
 * Source: τ-b with its normal approximation as R's cor.test(method = "kendall", exact = FALSE) gives it. Which p, df and
 * ratio suggest a log form is this project's decision, no source.
 */
export const suggestsLogForm = (people: readonly Replicates[]): LogFormTest | undefined => {
  const kendall = kendallTauB(
    people.map(({ mean }) => mean),
    people.map(({ k, sd }) => sd / c4(k)),
  );
  if (kendall === undefined) return undefined;
  const sorted = [...people].sort((a, b) => a.mean - b.mean);
  const half = Math.floor(sorted.length / 2);
  const lower = pooledSd(sorted.slice(0, half));
  const upper = pooledSd(sorted.slice(sorted.length - half));
  const ratio = lower > 0 ? upper / lower : null;
  const df = people.reduce((total, { k }) => total + k - 1, 0);
  const positive = people.every(({ mean }) => mean > 0);
  return {
    kendall,
    df,
    ratio,
    suggested:
      positive &&
      df >= CONVENTIONAL_DF &&
      kendall.tau > 0 &&
      kendall.oneSidedP < P_LIMIT &&
      ratio !== null &&
      ratio >= RATIO_LIMIT,
  };
};
