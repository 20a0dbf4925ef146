import { classify, type Classified, type CutOffPerson } from './classify';
import type { CutOff } from './cut-off';
import { cutOffsFor } from './cut-offs-for';
import { PUBLISHED_CUT_OFFS } from './published-cut-offs';

/** A waist with what is known of the person; the ratio is waist over height. */
export interface MeasuredWaist extends CutOffPerson {
  readonly waistCm: number;
  readonly ratio: number | null;
  readonly bmi: number | null;
}

export interface WaistAnswer {
  readonly cutOff: CutOff;
  readonly classified: Classified;
}

export interface WaistAnswers {
  /** By the sets that were chosen. */
  readonly chosen: readonly WaistAnswer[];
  /** Sets read in a source that put the waist on the other side of their lowest limit than a chosen one does. */
  readonly different: readonly WaistAnswer[];
}

const answersOf = (waist: MeasuredWaist, ids: ReadonlySet<string>): readonly WaistAnswer[] => {
  const { sex, ageYears, bmi, waistCm, ratio } = waist;
  const who = { sex, ageYears };
  return (['waist', 'waist_height'] as const).flatMap((quantity) => {
    const value = quantity === 'waist' ? waistCm : ratio;
    if (value === null) return [];
    return cutOffsFor({ ...who, quantity, chosen: ids, ...(bmi === null ? {} : { bmi }) }).flatMap((cutOff) => {
      const classified = classify(cutOff, value, who);
      return classified === undefined ? [] : [{ cutOff, classified }];
    });
  });
};

const isLowest = ({ classified }: WaistAnswer): boolean => classified.interval.lower === null;

/** The ids of every set read in a source, and of those from memory that are in `switchedOn`. */
const usable = (switchedOn: ReadonlySet<string>): ReadonlySet<string> =>
  new Set(
    PUBLISHED_CUT_OFFS.filter(({ id, verification }) => verification !== 'from-memory' || switchedOn.has(id)).map(
      ({ id }) => id,
    ),
  );

/**
 * Every waist and waist-to-height set that fits the person by sex and age, whoever it was made for: to choose from.
 *
 * @param switchedOn ids of the sets that the clinic offers: from memory, only these
 */
export const waistCutOffsFor = (waist: MeasuredWaist, switchedOn: ReadonlySet<string>): readonly CutOff[] =>
  answersOf(waist, usable(switchedOn)).map(({ cutOff }) => cutOff);

/** What a waist is classed by: the set that was chosen for the person, unless it may no longer be used; else what is offered. */
export const chosenWaistCutOffs = (chosen: string, offered: ReadonlySet<string>): ReadonlySet<string> =>
  usable(offered).has(chosen) ? new Set([chosen]) : offered;

/** Where a waist lies by the chosen sets, and which other sets of the same quantity answer differently. */
export const waistAnswers = (waist: MeasuredWaist, chosen: ReadonlySet<string>): WaistAnswers => {
  const own = answersOf(waist, chosen);
  const others = answersOf(waist, new Set([...usable(new Set())].filter((id) => !chosen.has(id))));
  return {
    chosen: own,
    different: others.filter((other) =>
      own.some((answer) => answer.cutOff.quantity === other.cutOff.quantity && isLowest(answer) !== isLowest(other)),
    ),
  };
};
