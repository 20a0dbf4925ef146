import { fromDayNumber, parseIsoDate, type IsoDate } from '../core/iso-date';
import type { DateOrder } from './mapping';
import { monthOf } from './month-words';
import { readTime, timeOfDayPart } from './read-time';

/** A day and, where the cell has one, its time. */
export interface ReadDate {
  readonly date: IsoDate;
  readonly time: string;
}

const NUMBERS = /^(\d{1,4})([-./ ])\s?(\d{1,2})\2\s?(\d{1,4})\.?$/;
const COMPACT = /^(\d{4})(\d{2})(\d{2})$/;
const DAY_WORD = /^(\d{1,2})(?:st|nd|rd|th|\.)?[ -]*(?:de )?(\p{L}+)\.?,?[ -]*(?:de )?(\d{4})$/u;
const WORD_DAY = /^(\p{L}+)\.? (\d{1,2})(?:st|nd|rd|th)?,? (\d{4})$/u;
const WITH_TIME = /^(.{4,}?\d{4}|\d{4}[-./]\d{1,2}[-./]\d{1,2}|\d{8})(?:T|,? +)(\d{1,2}[:h.].*)$/;
const WEEKDAY = /^(\p{L}{2,10})\.?,? +(?=[\p{L}\d])(.+)$/u;
const ZONE = /(?:\.\d+)?\s*(?:Z|[+-]\d{2}:?\d{2})$/;
const SERIAL = /^(\d{1,5})(?:\.(\d+))?$/;

/** Days from 1970-01-01 to the day 0 of a spreadsheet's count (ECMA-376 part 1, 18.17.4.1). */
const EPOCH = { 'serial-1900': -25_569, 'serial-1904': -24_107 } as const;

const dayOf = (year: number, month: number, day: number): IsoDate | undefined =>
  parseIsoDate(`${String(year).padStart(4, '0')}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`);

const readSerial = (text: string, order: 'serial-1900' | 'serial-1904'): ReadDate | undefined => {
  const [, whole, part] = SERIAL.exec(text) ?? [];
  const serial = Number(whole);
  // The count of 1900 holds a day that never was, 29 February 1900 (60): before it the dates lie one later.
  if (whole === undefined || (order === 'serial-1900' && serial <= 60)) return undefined;
  const time = part === undefined ? '' : (timeOfDayPart(Number(`0.${part}`)) ?? '');
  return { date: fromDayNumber(serial + EPOCH[order]), time };
};

/** `Mon, 3 Mar 2025` without its first word, which is no month. */
const withoutWeekday = (text: string): string => {
  const [, word = '', rest = text] = WEEKDAY.exec(text) ?? [];
  return monthOf(word) === undefined ? rest : text;
};

const readDay = (given: string, order: DateOrder): IsoDate | undefined => {
  const text = withoutWeekday(given);
  const [, first = '', , middle = '', last = ''] = NUMBERS.exec(text) ?? [];
  if (first.length === 4) return last.length > 2 ? undefined : dayOf(Number(first), Number(middle), Number(last));
  if (first !== '' && (first.length > 2 || last.length !== 4)) return undefined;
  if (first !== '' && order === 'dmy') return dayOf(Number(last), Number(middle), Number(first));
  if (first !== '') return order === 'mdy' ? dayOf(Number(last), Number(first), Number(middle)) : undefined;
  const [, year, month, day] = COMPACT.exec(text) ?? [];
  if (year !== undefined) return dayOf(Number(year), Number(month), Number(day));
  const dayFirst = DAY_WORD.exec(text);
  if (dayFirst !== null) return dayOf(Number(dayFirst[3]), monthOf(dayFirst[2] ?? '') ?? 0, Number(dayFirst[1]));
  const wordFirst = WORD_DAY.exec(text);
  if (wordFirst === null) return undefined;
  return dayOf(Number(wordFirst[3]), monthOf(wordFirst[1] ?? '') ?? 0, Number(wordFirst[2]));
};

/**
 * A date (and time) in the order given. A year that comes first, a date of eight digits (year first) and a month
 * written as a word leave no doubt and are read in every order. Two-digit years are never completed. A time zone is
 * passed over: the clock is read as it was written. Undefined where the text is no date.
 */
export const readDate = (text: string, order: DateOrder): ReadDate | undefined => {
  if (order === 'serial-1900' || order === 'serial-1904') {
    const serial = readSerial(text, order);
    if (serial !== undefined) return serial;
  }
  const [, day = text, clock] = WITH_TIME.exec(text) ?? [];
  const date = readDay(day, order);
  if (date === undefined) return undefined;
  if (clock === undefined) return { date, time: '' };
  const time = readTime(clock.replace(ZONE, '').trim());
  return time === undefined ? undefined : { date, time };
};
