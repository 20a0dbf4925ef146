import type { ComparisonResult } from './types/change-row';
import type { ProgramSettings } from './settings-parts/program-settings';
import type { ClientWeightIntention } from './weight-intention';

/** What is meant for one value. `change`: a change that nobody gave a direction. */
export type Intention = ClientWeightIntention | NonNullable<ProgramSettings['intended']['lean']>;

/** Where a judged change stands beside what is meant: as meant, the other way, or within error where a change is meant. */
export type BesideIntention = 'as-meant' | 'not-as-meant' | 'within';

type Judged = Extract<ComparisonResult, 'up' | 'down' | 'within'>;

/**
 * A change is only as meant where it is more than error; to hold or to stay level is as meant where no change against it
 * is. A rise of a value that is meant to hold is none against it. Common practice, no source.
 */
const BESIDE: Readonly<Record<Exclude<Intention, 'change'>, Readonly<Record<Judged, BesideIntention>>>> = {
  loss: { down: 'as-meant', up: 'not-as-meant', within: 'within' },
  gain: { up: 'as-meant', down: 'not-as-meant', within: 'within' },
  neither: { within: 'as-meant', up: 'not-as-meant', down: 'not-as-meant' },
  up: { up: 'as-meant', down: 'not-as-meant', within: 'within' },
  hold: { up: 'as-meant', within: 'as-meant', down: 'not-as-meant' },
};

/** Null where there is no result, or nobody said which way. */
export const besideIntention = (
  result: ComparisonResult | null,
  intention: Intention | null,
): BesideIntention | null => {
  if (intention === null || intention === 'change') return null;
  return result === 'up' || result === 'down' || result === 'within' ? BESIDE[intention][result] : null;
};

/**
 * What a program means to do to a value: to the weight, and to the clinic's lean value; null for every other value and
 * where nobody said.
 */
export const programIntention = (
  program: ProgramSettings | undefined,
  measure: string,
  lean: string,
): Exclude<Intention, 'change'> | null => {
  if (program === undefined) return null;
  if (measure === 'weight') return program.intended.weight;
  return measure === lean ? program.intended.lean : null;
};
