import { MONTH_DAYS } from './calendar';
import { weightSlopeAboveMean, type OwnCourse } from './planned-change';
import { type Program } from './programs';
import { type RandomSource } from './random-source';

const UNSUCCESSFUL_FACTOR = 1.7;
const YOUNG_FACTOR = 1.4;
const REASON_RECORDED = 0.6;

const hazardFactor = (program: Program, own: OwnCourse, age: number): number => {
  if (program.name !== 'Weight management') return 1;
  return (weightSlopeAboveMean(own) > 0.3 ? UNSUCCESSFUL_FACTOR : 1) * (age < 35 ? YOUNG_FACTOR : 1);
};

/** Days from the start until the client leaves: a constant hazard within each month, for five years at most. */
export const drawDaysUntilLeaving = (random: RandomSource, program: Program, own: OwnCourse, age: number): number => {
  const factor = hazardFactor(program, own, age);
  for (let month = 0; month < 60; month += 1) {
    const waiting = -Math.log(1 - random.uniform()) / (factor * program.leavingPerMonth(month));
    if (waiting < 1) return Math.round((month + waiting) * MONTH_DAYS);
  }
  return Number.POSITIVE_INFINITY;
};

/** The recorded reason for leaving, empty for those of whom none is known. */
export const drawLeavingReason = (random: RandomSource, program: Program): string => {
  if (!random.chance(REASON_RECORDED)) return '';
  if (program.name === 'Kidney nutrition' && random.chance(1 / 3)) return random.pick(['medical', 'medical', 'died']);
  return random.pick(['moved', 'declined', 'declined', 'other']);
};
