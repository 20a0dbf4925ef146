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

/** Every waist and waist-to-height set that fits the person by sex and age, whoever it was made for: to choose from. */
export const waistCutOffsFor = (waist: MeasuredWaist): readonly CutOff[] =>
  answersOf(waist, new Set(PUBLISHED_CUT_OFFS.map(({ id }) => id))).map(({ cutOff }) => cutOff);

/** Where a waist lies by the chosen sets, and which other sets of the same quantity answer differently. */
export const waistAnswers = (waist: MeasuredWaist, chosen: ReadonlySet<string>): WaistAnswers => {
  const own = answersOf(waist, chosen);
  const sourced = PUBLISHED_CUT_OFFS.filter(({ verification }) => verification !== 'from-memory');
  const others = answersOf(waist, new Set(sourced.map(({ id }) => id).filter((id) => !chosen.has(id))));
  return {
    chosen: own,
    different: others.filter((other) =>
      own.some((answer) => answer.cutOff.quantity === other.cutOff.quantity && isLowest(answer) !== isLowest(other)),
    ),
  };
};
