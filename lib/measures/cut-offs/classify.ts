import type { CutOff, CutOffBranch, CutOffInterval } from './cut-off';

/** Whom a value belongs to: ages in completed years, or decimal, on the day of the visit. */
export interface CutOffPerson {
  readonly sex: 'F' | 'M';
  readonly ageYears: number;
}

/** Where a value lies, and by which version of which cut-off. */
export interface Classified {
  readonly cutOffId: string;
  readonly cutOffVersion: number;
  readonly interval: CutOffInterval;
  readonly words: string;
}

/** The branch of a cut-off for a person; undefined where it was not made for that sex or age. */
export const branchFor = (cutOff: CutOff, { sex, ageYears }: CutOffPerson): CutOffBranch | undefined =>
  cutOff.branches.find(
    (branch) => (branch.sex ?? sex) === sex && ageYears >= branch.ageFrom && ageYears < (branch.ageBelow ?? Infinity),
  );

const holds = ({ lower, upper }: CutOffInterval, value: number): boolean =>
  (lower === null || value > lower.at || (lower.included && value === lower.at)) &&
  (upper === null || value < upper.at || (upper.included && value === upper.at));

/**
 * The interval of a value, unrounded, in the unit of `CUT_OFF_UNITS`.
 *
 * @returns undefined where the cut-off was not made for the person’s sex or age, or the value is not finite. Whether the
 * cut-off may be used for the value at all, `cutOffsFor` says.
 */
export const classify = (cutOff: CutOff, value: number, who: CutOffPerson): Classified | undefined => {
  if (!Number.isFinite(value)) return undefined;
  const interval = branchFor(cutOff, who)?.intervals.find((candidate) => holds(candidate, value));
  return interval && { cutOffId: cutOff.id, cutOffVersion: cutOff.version, interval, words: interval.words };
};
