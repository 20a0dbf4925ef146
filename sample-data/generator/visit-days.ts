import { FIRST_DAY, LAST_DAY, nearestWeekday, weekdaysBetween } from './calendar';
import { type Enrolment } from './person';
import { WEEKS_AFTER_OPERATION } from './programs';
import { type RandomSource } from './random-source';

const JITTER_WEEKS = 0.9;
const SKIPPED = 0.06;
const LATE_BASELINE = 0.07;
const NO_BASELINE = 0.03;
const LEAST_DAYS_BETWEEN = 4;

const firstVisit = (random: RandomSource, start: number): number[] => {
  const draw = random.uniform();
  if (draw < NO_BASELINE) return [];
  const days =
    draw < NO_BASELINE + LATE_BASELINE ? weekdaysBetween(start + 1, start + 7) : weekdaysBetween(start - 10, start);
  return [random.pick(days)];
};

/** The days on which a client came in one program: the planned ones with jitter, without those skipped or after leaving. */
export const drawVisitDays = (random: RandomSource, enrolment: Enrolment): number[] => {
  const { program, start, left } = enrolment;
  const days = firstVisit(random, start);
  const last = Math.min(LAST_DAY, left);
  for (const week of program.plannedVisitWeeks.slice(1)) {
    const wanted = start + 7 * (week + random.normal(0, JITTER_WEEKS));
    const day = nearestWeekday(Math.max(wanted, start + 8, (days.at(-1) ?? 0) + LEAST_DAYS_BETWEEN));
    if (!random.chance(SKIPPED) && day <= last) days.push(day);
  }
  if (program.name === 'Before surgery') {
    const after = nearestWeekday(left + 7 * (WEEKS_AFTER_OPERATION + random.normal(0, JITTER_WEEKS)));
    if (!random.chance(SKIPPED) && after <= LAST_DAY) days.push(after);
  }
  const within = days.filter((day) => day >= FIRST_DAY && day <= LAST_DAY);
  // A client who left before a first visit would not be in an export at all.
  return within.length === 0 && start <= LAST_DAY ? [start] : within;
};
