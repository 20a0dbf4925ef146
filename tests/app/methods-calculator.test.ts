import { describe, expect, it } from 'vitest';
import { calculate, typedNumber, unitTyped } from '../../app/(workspace)/methods/calculator';
import { SI_UNITS } from '../../lib/core/units';
import { equationExpression } from '../../lib/measures/equation';
import { FFM_KYLE_2001 } from '../../lib/measures/equations/ffm-kyle-2001';
import { REE_MUELLER_2004 } from '../../lib/measures/equations/mueller-2004';
import { inCommonUnit } from '../../lib/measures/in-common-unit';
import { inputsOf } from '../../lib/measures/inputs-of';

/** An invented man; the value is the published equation’s arithmetic: −4.104 + 0.518·178²/480 + 0.231·80 + 0.130·52 + 4.229. */
const MAN = { weight_kg: '80', height_cm: '178', r_ohm: '480', xc_ohm: '52', sex_male: '1' } as const;
const FFM_OF_MAN = 59.5573;

const expression = equationExpression(FFM_KYLE_2001);
const wanted = inputsOf(expression);
const POUNDS = { mass: 'lb', length: 'ft-in', energy: 'kcal' } as const;

describe('the calculator', () => {
  it('computes from what is typed, with point or comma', () => {
    expect(calculate(expression, wanted, MAN, SI_UNITS).value).toBeCloseTo(FFM_OF_MAN, 4);
    expect(calculate(expression, wanted, { ...MAN, weight_kg: '80,0' }, SI_UNITS).value).toBeCloseTo(FFM_OF_MAN, 4);
  });
  it('takes pounds, feet and inches where a person reads them', () => {
    const typed = { ...MAN, weight_kg: '176.3698', height_ft: '5', height_in: '10.0787' };
    expect(calculate(expression, wanted, typed, POUNDS).value).toBeCloseTo(FFM_OF_MAN, 3);
    expect(unitTyped('weight_kg', POUNDS)).toBe('lb');
    expect(calculate(expression, wanted, MAN, POUNDS).missing).toEqual(['height_cm']);
  });
  it('is unknown where an input is missing, and says which', () => {
    const found = calculate(expression, wanted, { ...MAN, xc_ohm: ' ' }, SI_UNITS);
    expect(found.value).toBeUndefined();
    expect(found.missing).toEqual(['xc_ohm']);
  });
  it('tells a word from a number', () => {
    const found = calculate(expression, wanted, { ...MAN, r_ohm: 'abc' }, SI_UNITS);
    expect(found.notNumbers).toEqual(['r_ohm']);
    expect(found.value).toBeUndefined();
    expect(typedNumber('−4.1')).toBe(-4.1);
    expect(typedNumber('1e3')).toBeNaN();
    expect(typedNumber('')).toBeUndefined();
  });
  it('tells what lies outside the group, as far as it was typed', () => {
    const heavy = calculate(expression, wanted, { ...MAN, weight_kg: '120' }, SI_UNITS, FFM_KYLE_2001);
    expect(heavy.outside).toEqual(['bmi']);
    expect(calculate(expression, wanted, MAN, SI_UNITS, FFM_KYLE_2001).outside).toEqual([]);
    const young = { ...FFM_KYLE_2001, population: { ...FFM_KYLE_2001.population, sex: 'F' as const } };
    const typed = { ...MAN, age_years: '19.9' };
    expect(calculate(expression, [...wanted, 'age_years'], typed, SI_UNITS, young).outside).toEqual(['age', 'sex']);
  });
  it('gives energy in kcal/d whatever the paper’s unit', () => {
    const resting = inCommonUnit(REE_MUELLER_2004);
    const found = calculate(resting, inputsOf(resting), { weight_kg: '80', age_years: '40', sex_male: '1' }, SI_UNITS);
    // 7.3982 MJ/d by hand: 3.21 + 0.047·80 + 1.009 − 0.01452·40, and 1 kcal = 4.184 kJ.
    expect(found.value).toBeCloseTo(7398.2 / 4.184, 1);
  });
});
