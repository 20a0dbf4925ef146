import { describe, expect, test } from 'vitest';
import { COLUMN_BY_NAME } from '../../../lib/import/columns';
import { cellReader } from '../../../lib/import/cell-reader';
import type { ColumnMapping } from '../../../lib/import/mapping';
import { numberMarks } from '../../../lib/import/number-marks';
import { readDate } from '../../../lib/import/read-date';
import { readNumber } from '../../../lib/import/read-number';
import { readTime } from '../../../lib/import/read-time';
import type { RawCell } from '../../../lib/formats/raw-table';

const read = (to: string, cell: RawCell, how: Partial<ColumnMapping> = {}): string => {
  const column = COLUMN_BY_NAME.get(to);
  if (column === undefined) throw new Error(`${to} is no column`);
  return cellReader(column, { to, from: [0], ...how })(cell);
};

describe('the marks of a number', () => {
  test.each([
    ['70', 'whole'],
    ['1 234', 'whole'],
    ['70.5', 'point'],
    ['512.125', 'point'],
    ['1,234.5', 'point'],
    ['1,234,567', 'point'],
    ['70,5', 'comma'],
    ['0,125', 'comma'],
    ['1.234,5', 'comma'],
    ['1.234.567', 'comma'],
    ["1'234,5", 'comma'],
    ['1,234', 'either'],
    ['12,34,5', 'none'],
    ['1,23.4', 'none'],
    ['70 kg', 'none'],
    ['2025-03-04', 'none'],
  ])('of %s are: %s', (text, marks) => {
    expect(numberMarks(text)).toBe(marks);
  });
});

describe('a number', () => {
  test.each([
    ['70.50', '.', '70.50'],
    ['1,234.5', '.', '1234.5'],
    ['1 234.5', '.', '1234.5'],
    ['70,50', ',', '70.50'],
    ['1.234,5', ',', '1234.5'],
    ['1’234,5', ',', '1234.5'],
    ['1,234', ',', '1.234'],
    ['1,234', '.', '1234'],
    ['0.125', ',', '0.125'],
    ['\u22125,5', ',', '-5.5'],
  ] as const)('%s with the mark %s is %s', (text, decimal, expected) => {
    expect(readNumber(text, decimal)).toBe(expected);
  });

  test('with thousands marks in wrong places is not read', () => {
    for (const text of ['1,23', '12,34,567', '1,2345', '12 34', '1.234,5'])
      expect(readNumber(text, '.')).toBeUndefined();
    for (const text of ['1.23,4', '1.2345,6', '1,234.5']) expect(readNumber(text, ',')).toBeUndefined();
  });

  test('in a canonical column stays as it is written, read or not', () => {
    for (const cell of ['70.50', '512,4', '1 000', '1,234', '1e3', 'abc', '.5'])
      expect(read('weight_kg', cell)).toBe(cell);
  });

  test('of a typed format is printed shortest', () => {
    expect(read('weight_kg', 70.1, { decimal: ',' })).toBe('70.1');
  });
});

describe('a unit', () => {
  test.each([
    ['weight_kg', '154', 'lb', '69.85322498'],
    ['weight_kg', '11', 'st', '69.85322498'],
    ['weight_kg', '11 st 4 lb', 'st-lb', '71.66759446'],
    ['weight_kg', '11-4', 'st-lb', '71.66759446'],
    ['weight_kg', '70500', 'g', '70.5'],
    ['height_cm', '1.72', 'm', '172'],
    ['height_cm', '1725', 'mm', '172.5'],
    ['height_cm', '70', 'in', '177.8'],
    ['height_cm', `5'11"`, 'ft-in', '180.34'],
    ['height_cm', '5 ft 11', 'ft-in', '180.34'],
    ['height_cm', '5-11', 'ft-in', '180.34'],
    ['height_cm', '6 ft', 'ft-in', '182.88'],
    ['r_ohm', '0.5124', 'kOhm', '512.4'],
    ['frequency_khz', '50000', 'Hz', '50'],
    ['fasted_h', '90', 'min', '1.5'],
    ['since_alcohol_h', '2', 'd', '48'],
    ['weeks_after_birth', '21', 'd', '3'],
    ['tbw_l', '38500', 'mL', '38.5'],
  ] as const)('of %s: %s %s is %s', (to, cell, unit, expected) => {
    expect(read(to, cell, { unit })).toBe(expected);
  });

  test('that is the column’s own leaves the recorded decimals', () => {
    expect(read('weight_kg', '70.50', { unit: 'kg', decimal: '.' })).toBe('70.50');
    expect(read('weight_kg', '70,50', { unit: 'kg', decimal: ',' })).toBe('70.50');
  });

  test('in the cell itself counts for that cell', () => {
    expect(read('weight_kg', '70.5 kg', { unit: 'kg', decimal: '.' })).toBe('70.5');
    expect(read('weight_kg', '154 lb', { unit: 'kg', decimal: '.' })).toBe('69.85322498');
    expect(read('weight_kg', '70.5 cm', { unit: 'kg', decimal: '.' })).toBe('70.5 cm');
  });

  test('never lets a cell through that it could not convert', () => {
    expect(read('height_cm', '5.11', { unit: 'ft-in' })).toBe('5.11 ft-in');
    expect(read('weight_kg', '11', { unit: 'st-lb' })).toBe('11 st-lb');
    expect(read('height_cm', `5'14"`, { unit: 'ft-in' })).toBe(`5'14"`);
    expect(read('weight_kg', '15O', { unit: 'lb' })).toBe('15O');
  });
});

describe('a date', () => {
  test.each([
    ['04/03/2025', 'dmy', '2025-03-04'],
    ['04/03/2025', 'mdy', '2025-04-03'],
    ['4.3.2025', 'dmy', '2025-03-04'],
    ['2025/3/4', 'ymd', '2025-03-04'],
    ['20250304', 'ymd', '2025-03-04'],
    ['2025-03-04', 'mdy', '2025-03-04'],
    ['4 Mar 2025', 'ymd', '2025-03-04'],
    ['4. März 2025', 'mdy', '2025-03-04'],
    ['March 4, 2025', 'dmy', '2025-03-04'],
    ['4 de marzo de 2025', 'dmy', '2025-03-04'],
    ['04-déc.-2025', 'dmy', '2025-12-04'],
    ['2025-03-04T08:20:00Z', 'ymd', '2025-03-04'],
    ['04/03/2025 08:20', 'dmy', '2025-03-04'],
    ['45720', 'serial-1900', '2025-03-04'],
    ['44258', 'serial-1904', '2025-03-04'],
    ['61', 'serial-1900', '1900-03-01'],
  ] as const)('%s in the order %s is %s', (text, order, expected) => {
    expect(readDate(text, order)?.date).toBe(expected);
  });

  test('that does not exist, or whose year has two digits, is not read', () => {
    for (const text of ['31/02/2025', '13/13/2025', '04/03/25', '4.3.25', '2025-13-01', '04/03-2025', 'soon', '60']) {
      expect(readDate(text, 'dmy')).toBeUndefined();
    }
    expect(read('visit_date', '04/03/25', { dateOrder: 'dmy' })).toBe('04/03/25');
  });

  test('in a canonical column stays as it is written unless a time stands behind it', () => {
    for (const cell of ['2025-03-04', '2025-3-4', '04/03/2025', '2025-02-30'])
      expect(read('visit_date', cell)).toBe(cell);
    expect(read('visit_date', '2025-03-04T08:20:00')).toBe('2025-03-04');
  });
});

describe('a time', () => {
  test.each([
    ['8:05', '08:05'],
    ['08:05:30', '08:05:30'],
    ['8:05 AM', '08:05'],
    ['12:05 am', '00:05'],
    ['12:05 p.m.', '12:05'],
    ['8 pm', '20:00'],
    ['8h05', '08:05'],
    ['8.05 Uhr', '08:05'],
  ])('%s is %s', (text, expected) => {
    expect(readTime(text)).toBe(expected);
  });

  test('that is none is not read', () => {
    for (const text of ['24:00', '8:60', '13:00 pm', '8.05', '805']) expect(readTime(text)).toBeUndefined();
  });

  test('is taken out of a date with its order, a typed part of a day is a time', () => {
    expect(read('visit_time', '25/12/2025 08:20', { dateOrder: 'dmy' })).toBe('08:20');
    expect(read('visit_time', 0.5)).toBe('12:00');
    expect(read('visit_time', 8.3)).toBe('8.3');
  });
});

describe('a word', () => {
  test('is read in any case, and by the mapping’s own vocabulary first', () => {
    expect(read('sex', ' f ')).toBe('F');
    expect(read('sex', '1', { words: { '1': 'M' } })).toBe('M');
    expect(read('sex', 'M', { words: { m: 'F' } })).toBe('F');
    expect(read('rested', true)).toBe('y');
    expect(read('rested', 'perhaps')).toBe('perhaps');
  });

  test('loses marks that cannot be seen, an id too, other text keeps them', () => {
    expect(read('sex', '\u200BF')).toBe('F');
    expect(read('client_id', 'C-1\u00A0')).toBe('C-1');
    expect(read('note', 'a\u00A0b')).toBe('a\u00A0b');
  });
});
