import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  addDays,
  dayNumber,
  daysBetween,
  fromDayNumber,
  mondayOf,
  parseIsoDate,
  type IsoDate,
} from '../../lib/core/iso-date';

const day = (text: string): IsoDate => {
  const date = parseIsoDate(text);
  if (date === undefined) throw new Error(`${text} is no date`);
  return date;
};

describe('a date', () => {
  test.each(['2024-02-29', '2000-02-29', '1900-01-01', '2025-12-31', '0100-01-01', '9999-12-31'])(
    '%s exists',
    (text) => {
      expect(parseIsoDate(text)).toBe(text);
    },
  );

  // 1900 and 2100 are no leap years: divisible by 100 and not by 400.
  test.each([
    ...['2025-02-29', '1900-02-29', '2100-02-29', '2025-02-30', '2025-04-31', '2025-13-01', '2025-00-10', '2025-01-00'],
    ...[
      '2025-1-04',
      '2025-01-4',
      '25-01-04',
      '2025/01/04',
      '04.01.2025',
      '2025-01-04T00:00',
      ' 2025-01-04',
      '',
      '-025-01-04',
    ],
  ])('%j does not', (text) => {
    expect(parseIsoDate(text)).toBeUndefined();
  });

  test.each([
    ['1970-01-01', 0],
    ['1969-12-31', -1],
    ['2000-03-01', 11_017],
    ['2024-12-31', 20_088],
  ])('%s is day %i since 1970-01-01', (text, days) => {
    expect(dayNumber(day(text))).toBe(days);
    expect(fromDayNumber(days)).toBe(text);
  });

  test('moves over the end of February and of the year', () => {
    expect(addDays(day('2024-02-28'), 1)).toBe('2024-02-29');
    expect(addDays(day('2025-02-28'), 1)).toBe('2025-03-01');
    expect(addDays(day('2025-01-01'), -1)).toBe('2024-12-31');
    expect(daysBetween(day('2024-01-01'), day('2025-01-01'))).toBe(366);
    expect(daysBetween(day('2025-03-04'), day('2025-03-01'))).toBe(-3);
  });

  test('belongs to the week of its Monday', () => {
    // 2025-06-30 was a Monday (ISO 8601 week 2025-W27); 1969-12-29 began the week of 1 January 1970, a Thursday.
    expect(['2025-06-30', '2025-07-01', '2025-07-06'].map((text) => mondayOf(day(text)))).toEqual(
      Array.from({ length: 3 }, () => '2025-06-30'),
    );
    expect(mondayOf(day('2025-06-29'))).toBe('2025-06-23');
    expect(mondayOf(day('1970-01-01'))).toBe('1969-12-29');
    expect(mondayOf(day('1969-12-28'))).toBe('1969-12-22');
  });

  test('and days counted from it lead back', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -300_000, max: 2_000_000 }),
        fc.integer({ min: -5000, max: 5000 }),
        (start, days) => {
          const date = fromDayNumber(start);
          expect(parseIsoDate(date)).toBe(date);
          expect(daysBetween(date, addDays(date, days))).toBe(days);
          expect(daysBetween(mondayOf(date), date)).toBeGreaterThanOrEqual(0);
          expect(daysBetween(mondayOf(date), date)).toBeLessThan(7);
        },
      ),
      { seed: 1970, numRuns: 300 },
    );
  });
});
