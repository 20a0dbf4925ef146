import { normalQuantile } from './normal-quantile';
import { precisionRange } from './precision-range';
import { CONVENTIONAL_DF } from './threshold-factor';

/** A planned error study: so many people, days each, readings each day. */
export interface PlannedStudy {
  readonly people: number;
  readonly visits: number;
  readonly readings: number;
}

/** What a planned study would give. */
export interface StudySize {
  readonly dfBetween: number;
  readonly dfWithin: number;
  /** Whether the between-day part reaches 30 degrees of freedom from at least 15 people. */
  readonly enough: boolean;
  /** 95 % χ² range of PE as factors of PE; null without a degree of freedom. */
  readonly range: readonly [number, number] | null;
  /** People still needed at this number of visits for 30 degrees of freedom. */
  readonly peopleNeeded: number;
}

const PEOPLE_FOR_FIRM = 15;

/**
 * Size of an error study: ν_M = people·(visits − 1), ν_w = people·visits·(readings − 1), and the interval that ν_M leaves.
 *
 * Source: International Society for Clinical Densitometry, precision assessment (15 people three times or 30 twice: 30
 * degrees of freedom); χ² interval of a variance.
 */
export const studySize = ({ people, visits, readings }: PlannedStudy): StudySize => {
  const dfBetween = people * Math.max(0, visits - 1);
  const dfWithin = people * visits * Math.max(0, readings - 1);
  return {
    dfBetween,
    dfWithin,
    enough: dfBetween >= CONVENTIONAL_DF && people >= PEOPLE_FOR_FIRM,
    range: dfBetween > 0 ? precisionRange(1, dfBetween) : null,
    peopleNeeded: visits > 1 ? Math.max(PEOPLE_FOR_FIRM, Math.ceil(CONVENTIONAL_DF / (visits - 1))) : 0,
  };
};

/**
 * The least significant change that no number of readings goes below: z·√2·s_b.
 *
 * @param dayToDaySd s_b in the value's unit. @param level two-sided confidence.
 */
export const lscFloor = (dayToDaySd: number, level: number): number =>
  normalQuantile(1 - (1 - level) / 2) * Math.SQRT2 * dayToDaySd;
