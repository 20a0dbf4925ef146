import { dayNumber, fromDayNumber, type IsoDate } from '../../lib/core/iso-date';

/** Monday of week 0, as a day number (days since 1970-01-01). */
export const FIRST_DAY = dayNumber('2024-01-08' as IsoDate);

/** Friday of week 103: the last visit day, and the day up to which the clinic is described. */
export const LAST_DAY = dayNumber('2026-01-02' as IsoDate);

/** Days in a month of planned change. */
export const MONTH_DAYS = 30.4375;

/** The Monday of a week of the clinic's calendar. */
export const weekStart = (week: number): number => FIRST_DAY + 7 * week;

/** The week of the clinic's calendar in which a day lies. */
export const weekOf = (day: number): number => Math.floor((day - FIRST_DAY) / 7);

const isWeekday = (day: number): boolean => (((day - FIRST_DAY) % 7) + 7) % 7 < 5;

/** The nearest day from Monday to Friday: Saturday becomes Friday, Sunday becomes Monday. */
export const nearestWeekday = (day: number): number => {
  const whole = Math.round(day);
  if (isWeekday(whole)) return whole;
  return isWeekday(whole - 1) ? whole - 1 : whole + 1;
};

/** The days from Monday to Friday in [from, to]. */
export const weekdaysBetween = (from: number, to: number): number[] => {
  const days: number[] = [];
  for (let day = from; day <= to; day += 1) if (isWeekday(day)) days.push(day);
  return days;
};

export const isoDate = (day: number): IsoDate => fromDayNumber(day);

export const dayOf = (date: string): number => dayNumber(date as IsoDate);

/** The day of its year, 1 to 366. */
export const dayOfYear = (day: number): number => day - dayOf(`${isoDate(day).slice(0, 4)}-01-01`) + 1;
