import type { Citation } from '../citation';
import type { Verification } from '../equation';

/** What a cut-off can be for. Weight loss in % of the earlier weight, waist/height as a ratio, grip, gait and chair stands as measured. */
export const CUT_OFF_QUANTITIES = [
  ...(['bmi', 'waist', 'waist_height', 'weight_loss'] as const),
  ...(['ffmi', 'fmi', 'fat_percent', 'asm', 'asmi', 'asm_bmi', 'asm_percent', 'smi', 'smm_percent'] as const),
  ...(['grip', 'gait', 'chair'] as const),
] as const;
export type CutOffQuantity = (typeof CUT_OFF_QUANTITIES)[number];

/** UCUM codes of the quantities. */
export const CUT_OFF_UNITS: Readonly<Record<CutOffQuantity, 'kg/m2' | 'cm' | '1' | '%' | 'kg' | 'm2' | 'm/s' | 's'>> = {
  bmi: 'kg/m2',
  waist: 'cm',
  waist_height: '1',
  weight_loss: '%',
  ffmi: 'kg/m2',
  fmi: 'kg/m2',
  fat_percent: '%',
  asm: 'kg',
  asmi: 'kg/m2',
  asm_bmi: 'm2',
  asm_percent: '%',
  smi: 'kg/m2',
  smm_percent: '%',
  grip: 'kg',
  gait: 'm/s',
  chair: 's',
};

/** How the value must have been obtained. */
export type CutOffMethod = 'weighing' | 'tape' | 'bia' | 'dxa' | 'dynamometer' | 'walk' | 'chair-stands';

/** An end of an interval; whether the end itself belongs to it. */
export interface IntervalEnd {
  readonly at: number;
  readonly included: boolean;
}

/** One of the intervals into which a cut-off divides all values; null: no end. Its words never name a disease of the person. */
export interface CutOffInterval {
  readonly id: string;
  readonly lower: IntervalEnd | null;
  readonly upper: IntervalEnd | null;
  readonly words: string;
  /** Only where the source asks a question with yes or no: whether its criterion is met. */
  readonly criterion?: 'met' | 'not-met';
}

/** The intervals for one sex or both and one age band [from, below) in completed years. */
export interface CutOffBranch {
  readonly sex?: 'F' | 'M';
  readonly ageFrom: number;
  readonly ageBelow?: number;
  readonly intervals: readonly CutOffInterval[];
}

/** For whom the source does not mean the cut-off. */
export interface CutOffLimits {
  /** Only where the BMI is known and below this. */
  readonly bmiBelow?: number;
  readonly notInPregnancy?: true;
  /** Only where the person is known to have lost the weight without meaning to. */
  readonly onlyUnintended?: true;
  /** Months between the two weights: at most, or more than. */
  readonly upToMonths?: number;
  readonly overMonths?: number;
}

/** A published cut-off as data. */
export interface CutOff {
  /** Stored with its version beside everything that was classed by it. */
  readonly id: string;
  /** Raised with each change of a value or a bound. */
  readonly version: number;
  /** Author or body and year, and what it is about. */
  readonly name: string;
  readonly quantity: CutOffQuantity;
  /** Any of these. */
  readonly methods: readonly CutOffMethod[];
  /** Where it was derived with an equation: offered only for values of these, never for exported ones. */
  readonly equationIds?: readonly string[];
  /** The group of people by descent for whom it was made; null: none in particular. Never an input: somebody chooses it. */
  readonly group: string | null;
  readonly branches: readonly CutOffBranch[];
  readonly limits: CutOffLimits;
  /** Which bound the source prints, and what was decided where sources differ or print a gap. */
  readonly boundRule: string;
  readonly citation: Citation;
  readonly verification: Verification;
  /** What exactly was read and what was not. */
  readonly verificationNote: string;
  readonly cautions: readonly string[];
}

/** Whether a cut-off is offered before anybody chose it: nothing from memory, and nothing for one group of people. */
export const isCutOffInForceByDefault = ({ verification, group }: CutOff): boolean =>
  verification !== 'from-memory' && group === null;
