import { LAST_DAY, nearestWeekday } from './calendar';
import { drawDaysUntilLeaving, drawLeavingReason } from './leaving';
import { type Enrolment } from './person';
import { drawOwnCourse } from './planned-change';
import { OPERATION_WEEK, type Program } from './programs';
import { type RandomSource } from './random-source';

/** The calendar month (from the clinic's first, January 2024) from which the medicine is used: January 2025. */
const MEDICINE_FROM = Date.UTC(2025, 0, 1) / 86_400_000;
const MEDICINE_SHARE = 0.25;

const LOSERS_STAY_DAYS = 280;

type Ending = Pick<Enrolment, 'left' | 'end' | 'endReason'>;

const recorded = (end: number, endReason: string): Pick<Enrolment, 'end' | 'endReason'> =>
  end <= LAST_DAY && endReason !== '' ? { end, endReason } : { end: undefined, endReason: '' };

const operatedEnding = (start: number, days: number): Ending => {
  const operation = nearestWeekday(start + Math.min(days, OPERATION_WEEK * 7));
  return { left: operation, ...recorded(operation, 'operated') };
};

const ordinaryEnding = (random: RandomSource, program: Program, start: number, days: number): Ending => {
  const reason = drawLeavingReason(random, program);
  const finish = program.ends ? nearestWeekday(start + 7 * Math.max(...program.plannedVisitWeeks) + 21) : Infinity;
  const left = Number.isFinite(days) ? nearestWeekday(start + days) : Infinity;
  if (left >= finish) return { left: finish, ...recorded(finish, 'finished') };
  return { left, ...recorded(left, reason) };
};

/** One client's time in a program. A hidden loser never leaves before nine months. */
export const drawEnrolment = (
  random: RandomSource,
  program: Program,
  start: number,
  age: number,
  loser: boolean,
): Enrolment => {
  const onMedicine = random.chance(MEDICINE_SHARE);
  const medicine = onMedicine && program.name === 'Weight management' && start >= MEDICINE_FROM && !loser;
  const own = drawOwnCourse(random, program.name, medicine);
  const drawn = drawDaysUntilLeaving(random, program, own, age);
  const days = loser && drawn < LOSERS_STAY_DAYS ? Infinity : drawn;
  const ending =
    program.name === 'Before surgery' ? operatedEnding(start, days) : ordinaryEnding(random, program, start, days);
  return { program, start, own, ...ending };
};
