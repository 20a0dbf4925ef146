import { describe, expect, test } from 'vitest';
import { createFormatters } from '../../lib/core/formatters';
import { parseIsoDate, type IsoDate } from '../../lib/core/iso-date';

const f = createFormatters();
const imperial = createFormatters('en-GB', { mass: 'lb', length: 'ft-in', energy: 'kJ' });
const date = parseIsoDate('2025-03-04') as IsoDate;
const MINUS = '\u2212';
const SPACE = '\u00A0';

describe('a number', () => {
  test('below zero has a true minus, no hyphen', () => {
    expect(f.number(-1.45, 1)).toBe(`${MINUS}1.5`);
    expect(f.signed(-1234.5, 1)).toBe(`${MINUS}1,234.5`);
    expect(f.percent(-0.05)).toBe(`${MINUS}5${SPACE}%`);
  });

  test('that is a change always has a sign, and none at zero', () => {
    expect([f.signed(0.5, 1), f.signed(0, 1), f.signed(-0.04, 1), f.signed(0.04, 1)]).toEqual([
      '+0.5',
      '0.0',
      '0.0',
      '0.0',
    ]);
  });

  test('that rounds to zero is no negative zero', () => {
    expect([f.number(-0.04, 1), f.number(-0, 0)]).toEqual(['0.0', '0']);
  });

  test('has the decimals that were asked for', () => {
    expect([f.number(1, 2), f.number(4279), f.percent(0.623, 1)]).toEqual(['1.00', '4,279', `62.3${SPACE}%`]);
  });

  test('takes one of two words after the rule of the language', () => {
    expect([0, 1, 2, 1000].map((n) => f.plural(n, '# visit', '# visits'))).toEqual([
      ...['0 visits', '1 visit', '2 visits', '1,000 visits'],
    ]);
  });
});

describe('a quantity', () => {
  test('never breaks between its number and its unit', () => {
    expect([f.quantity(59.557, 'kg', 1), f.quantity(512.4, 'Ohm', 1), f.quantity(269.66, 'Ohm/m', 1)]).toEqual([
      ...[`59.6${SPACE}kg`, `512.4${SPACE}Ω`, `269.7${SPACE}Ω/m`],
    ]);
    expect(f.quantity(6.183, 'deg', 2)).toBe('6.18°');
    expect(f.quantity(1.6, '1', 1)).toBe('1.6');
  });

  test('is shown in pounds and kilojoules where they are preferred', () => {
    expect(imperial.quantity(80, 'kg', 1)).toBe(`176.4${SPACE}lb`);
    expect(imperial.change(-1, 'kg', 2)).toBe(`${MINUS}2.20`);
    expect(imperial.value(1700, 'kcal/d', 0)).toBe('7,113');
    expect(imperial.unit('kcal/d')).toBe('kJ/d');
    expect(imperial.quantity(25.25, 'kg/m2', 1)).toBe(`25.3${SPACE}kg/m²`);
  });

  test('that is an estimate is rounded after its unit is chosen, not before', () => {
    expect(f.significant(55.2, 'MJ', 2)).toBe(`13,000${SPACE}kcal`);
    expect(imperial.significant(55.2, 'MJ', 2)).toBe(`55,000${SPACE}kJ`);
    expect(f.significant(-7.1234, 'MJ', 2)).toBe(`${MINUS}1,700${SPACE}kcal`);
    expect(f.significant(1532.6, 'kcal/d', 3)).toBe(`1,530${SPACE}kcal/d`);
    expect(imperial.significant(1532.6, 'kcal/d', 3)).toBe(`6,410${SPACE}kJ/d`);
    expect([f.significant(0, 'kcal/d', 3), f.significant(0.01234, 'kg', 2), f.significant(9.96, 'kg', 2)]).toEqual([
      ...[`0${SPACE}kcal/d`, `0.012${SPACE}kg`, `10${SPACE}kg`],
    ]);
  });

  test('that is a height is feet and inches, and never twelve inches', () => {
    expect(f.height(178)).toBe(`178.0${SPACE}cm`);
    expect(imperial.height(178)).toBe(`5${SPACE}ft${SPACE}10.1${SPACE}in`);
    expect(imperial.height(182.87)).toBe(`6${SPACE}ft${SPACE}0.0${SPACE}in`);
  });
});

describe('a date', () => {
  test('is the same calendar day in every time zone', () => {
    expect([f.date(date), f.dateShort(date), f.dayMonth(date)].map((text) => text.replaceAll(SPACE, ' '))).toEqual([
      ...['4 March 2025', '4 Mar 2025', '4 Mar'],
    ]);
  });
});

describe('a list', () => {
  test('is joined as the language joins it', () => {
    expect([f.list(['a']), f.list(['a', 'b']), f.list(['a', 'b', 'c'])]).toEqual(['a', 'a and b', 'a, b and c']);
  });
});
