import type { ChangePrior } from './change-prior';
import { normalUpperTail } from './normal-upper-tail';

/** A guess about a typical person with this change; not a correction of one person’s. */
export interface ShrunkenChange {
  /** λ = τ²/(τ² + V). */
  readonly weight: number;
  /** d̃ = μ + λ(d − μ). */
  readonly change: number;
  /** √(λV). */
  readonly sd: number;
  /** P(Δ < 0) and P(Δ > 0) among such people. */
  readonly below: number;
  readonly above: number;
}

/**
 * A change pulled towards what such people change on average, by as much as error explains their spread.
 *
 * @param change d. @param variance its own V.
 * @returns undefined where the spread is no more than error explains (λ = 0): then nothing is said about one person.
 */
export const shrunkenChange = (change: number, variance: number, prior: ChangePrior): ShrunkenChange | undefined => {
  if (!(prior.variance > 0 && variance > 0)) return undefined;
  const weight = prior.variance / (prior.variance + variance);
  const guess = prior.mean + weight * (change - prior.mean);
  const sd = Math.sqrt(weight * variance);
  return {
    weight,
    change: guess,
    sd,
    below: normalUpperTail(guess / sd),
    above: normalUpperTail(-guess / sd),
  };
};
