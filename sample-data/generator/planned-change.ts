import { MONTH_DAYS } from './calendar';
import { OPERATION_WEEK, type ProgramName } from './programs';
import { type RandomSource } from './random-source';

/** Change since the start that is not error: kg, kg, degrees. */
export interface PlannedChange {
  readonly ffm: number;
  readonly fm: number;
  readonly phase: number;
}

/** What is a person's own in the course of a program. */
export interface OwnCourse {
  /** FFM in kg per month; for weight management the weight. */
  readonly slope: number;
  /** Share of the weight change that is lean; weight management only. */
  readonly leanShare: number;
  readonly medicine: boolean;
}

/** The mean slope of weight management, kg of weight per month, without and with the medicine. */
const WEIGHT_SLOPE = -0.9;
const WEIGHT_SLOPE_MEDICINE = -1.5;

const LOSER_MONTHS = 9;
const GAIN_WEEKS_BEFORE_SURGERY = 6;

const inTwoPhases = (months: number, until: number, first: number, then: number): number =>
  first * Math.min(months, until) + then * Math.max(0, months - until);

/** The slopes of one person in one program. */
export const drawOwnCourse = (random: RandomSource, program: ProgramName, medicine: boolean): OwnCourse => {
  switch (program) {
    case 'Strength, 65 and over':
      return { slope: random.normal(0.22, 0.12), leanShare: 0, medicine };
    case 'Weight management':
      return {
        slope: random.normal(medicine ? WEIGHT_SLOPE_MEDICINE : WEIGHT_SLOPE, 0.55),
        leanShare: random.normal(medicine ? 0.33 : 0.22, 0.08, 0.02, 0.5),
        medicine,
      };
    case 'Kidney nutrition':
      return { slope: random.normal(0, 0.03), leanShare: 0, medicine };
    case 'Before surgery':
      return { slope: random.normal(0.5, 0.12), leanShare: 0, medicine };
    case 'Check-ups only':
      return { slope: random.normal(-0.01, 0.015), leanShare: 0, medicine };
  }
};

/** How far a person's weight slope lies above the mean of those treated alike, kg per month. */
export const weightSlopeAboveMean = (own: OwnCourse): number =>
  own.slope - (own.medicine ? WEIGHT_SLOPE_MEDICINE : WEIGHT_SLOPE);

const usualChange = (program: ProgramName, own: OwnCourse, months: number, operation: number): PlannedChange => {
  switch (program) {
    case 'Strength, 65 and over':
      return { ffm: inTwoPhases(months, 5.5, own.slope, -0.05), fm: -0.1 * months, phase: 0.05 * months };
    case 'Weight management': {
      const weight = inTwoPhases(months, 6, own.slope, -0.15);
      return { ffm: own.leanShare * weight, fm: (1 - own.leanShare) * weight, phase: 0 };
    }
    case 'Kidney nutrition':
      return { ffm: own.slope * months, fm: 0.02 * months, phase: 0 };
    case 'Before surgery': {
      const gaining = Math.min(months, operation, (GAIN_WEEKS_BEFORE_SURGERY * 7) / MONTH_DAYS);
      const before = Math.min(months, operation);
      const operated = months > operation;
      return {
        ffm: own.slope * gaining - (operated ? 1.8 : 0),
        fm: -0.1 * before,
        phase: 0.03 * before - (operated ? 0.3 : 0),
      };
    }
    case 'Check-ups only':
      return { ffm: own.slope * months, fm: 0.03 * months, phase: 0 };
  }
};

/**
 * The planned change `days` after the start (none before it). A hidden loser loses 0.40 kg FFM a month for nine months:
 * instead of the program's course, in weight management beyond it.
 */
export const plannedChange = (
  program: ProgramName,
  own: OwnCourse,
  days: number,
  loser: boolean,
  operationDays: number = OPERATION_WEEK * 7,
): PlannedChange => {
  const months = Math.max(0, days) / MONTH_DAYS;
  const usual = usualChange(program, own, months, operationDays / MONTH_DAYS);
  if (!loser) return usual;
  const losing = Math.min(months, LOSER_MONTHS);
  const loss: PlannedChange = { ffm: -0.4 * losing, fm: -0.05 * losing, phase: -0.1 * losing };
  if (program !== 'Weight management') return loss;
  return { ffm: usual.ffm + loss.ffm, fm: usual.fm + loss.fm, phase: usual.phase + loss.phase };
};
