import { describe, expect, test } from 'vitest';
import { DEFAULT_CATALOGUE } from '../../lib/measures/catalogue';
import { evaluate } from '../../lib/measures/evaluate';
import type { Inputs } from '../../lib/measures/input-id';
import type { AnyMeasureId } from '../../lib/measures/measure-id';

// Two invented subjects. The numbers were worked out from the published formulas by hand-written arithmetic outside
// this code: Kyle 2001 (Nutrition 17:248–253, abstract), Janssen 2000 (J Appl Physiol 89:465–471, first page), Schutz
// 2002 (Int J Obes 26:953–960, abstract: FFMI + FMI = BMI), Saragat 2014 (abstract: R and Xc standardised for stature in metres).
const M: Inputs = { weight_kg: 80, height_cm: 178, age_years: 40, sex_male: 1, r_ohm: 480, xc_ohm: 52 };
const F: Inputs = { weight_kg: 65, height_cm: 165, age_years: 45, sex_male: 0, r_ohm: 580, xc_ohm: 55 };

const value = (id: AnyMeasureId, inputs: Inputs): number => {
  const result = evaluate(DEFAULT_CATALOGUE.measure(id).formula, inputs);
  if (result === undefined) throw new Error(`${id} is unknown`);
  return result;
};

const EXPECTED: readonly (readonly [AnyMeasureId, string, string])[] = [
  ['weight', '80.0000', '65.0000'],
  ['bmi', '25.2493', '23.8751'],
  ['h2_r', '66.0083', '46.9397'],
  ['z', '482.8085', '582.6019'],
  ['phase_angle', '6.1829', '5.4170'],
  ['r_h', '269.6629', '351.5152'],
  ['xc_h', '29.2135', '33.3333'],
  ['ffm', '59.5573', '42.3757'],
  ['fm', '20.4427', '22.6243'],
  ['fat_percent', '25.5534', '34.8066'],
  ['ffmi', '18.7973', '15.5650'],
  ['fmi', '6.4521', '8.3101'],
  ['smm', '32.5563', '20.7298'],
  ['smi', '10.2753', '7.6143'],
];

describe('the values of two subjects', () => {
  test.each(EXPECTED)('%s is %s and %s', (id, male, female) => {
    expect([value(id, M).toFixed(4), value(id, F).toFixed(4)]).toEqual([male, female]);
  });

  test('the indices of fat-free and fat mass sum to the body mass index', () => {
    for (const subject of [M, F])
      expect(value('ffmi', subject) + value('fmi', subject)).toBeCloseTo(value('bmi', subject), 12);
  });

  // Check values of the mathematical coupling, worked out by hand: 0.231 · 10 kg; 0.518 · (179² − 178²)/480.
  test('weight and height alone move fat-free mass: 10 kg of weight by 2.31 kg, 1 cm by 0.385 kg', () => {
    const by = (id: AnyMeasureId, change: Inputs): number => value(id, { ...M, ...change }) - value(id, M);
    expect(by('ffm', { weight_kg: 70 })).toBeCloseTo(-2.31, 9);
    expect(by('ffm_without_weight', { weight_kg: 70 })).toBeCloseTo(0, 9);
    expect(by('ffm', { height_cm: 179 })).toBeCloseTo(0.3852625, 9);
  });

  test('what is recorded is taken as recorded', () => {
    const exported = { ffm_kg: 58.1, fm_kg: 21.9, smm_kg: 31.2, tbw_l: 42.5, ecw_l: 17.3, phase_angle_deg: 6.2 };
    expect(
      (
        ['ffm_exported', 'fm_exported', 'smm_exported', 'tbw_exported', 'ecw_exported', 'phase_angle_exported'] as const
      ).map((id) => value(id, exported)),
    ).toEqual([58.1, 21.9, 31.2, 42.5, 17.3, 6.2]);
  });

  test('values that only explain others are those of their definition', () => {
    expect(value('z_h', M)).toBeCloseTo(482.8085 / 1.78, 4);
    expect(value('ffm_without_weight', M)).toBeCloseTo(59.5573 - 0.231 * 80, 4);
  });
});

// Each mistake below gives a plausible number, so only a fixed value can catch it.
describe('a mistake of units or coding', () => {
  const differs = (wrong: Inputs, ids: readonly AnyMeasureId[]): void => {
    for (const id of ids) {
      const row = EXPECTED.find(([known]) => known === id);
      expect(`${id} ${value(id, wrong).toFixed(4)}`).not.toBe(`${id} ${String(row?.[1])}`);
    }
  };

  test('height in metres is caught', () => {
    differs({ ...M, height_cm: 1.78 }, ['bmi', 'h2_r', 'r_h', 'xc_h', 'ffm', 'fm', 'ffmi', 'smm', 'smi']);
  });

  test('the sex coding reversed is caught, by 4.229 kg of fat-free and 3.825 kg of muscle mass', () => {
    const reversed = { ...M, sex_male: 0 };
    differs(reversed, ['ffm', 'fm', 'fat_percent', 'ffmi', 'fmi', 'smm', 'smi']);
    expect(value('ffm', M) - value('ffm', reversed)).toBeCloseTo(4.229, 12);
    expect(value('smm', M) - value('smm', reversed)).toBeCloseTo(3.825, 12);
  });

  test('resistance and reactance exchanged are caught wherever the two differ in role', () => {
    const exchanged = { ...M, r_ohm: 52, xc_ohm: 480 };
    differs(exchanged, ['phase_angle', 'r_h', 'xc_h', 'h2_r', 'ffm', 'smm']);
    expect(value('phase_angle', exchanged) + value('phase_angle', M)).toBeCloseTo(90, 12);
  });

  test('the angle in radians is caught', () => {
    expect(Math.atan2(52, 480).toFixed(4)).not.toBe(value('phase_angle', M).toFixed(4));
  });

  test('age in months is caught', () => {
    differs({ ...M, age_years: 480 }, ['smm', 'smi']);
  });
});

describe('a value that cannot be computed', () => {
  test.each<[AnyMeasureId, keyof Inputs]>([
    ['bmi', 'height_cm'],
    ['ffm', 'sex_male'],
    ['ffm', 'weight_kg'],
    ['smm', 'age_years'],
    ['phase_angle', 'xc_ohm'],
    ['z', 'r_ohm'],
  ])('%s without %s is unknown', (id, missing) => {
    expect(evaluate(DEFAULT_CATALOGUE.measure(id).formula, { ...M, [missing]: undefined })).toBeUndefined();
  });

  test('a height or a resistance of zero gives nothing, not infinity', () => {
    expect(evaluate(DEFAULT_CATALOGUE.measure('bmi').formula, { ...M, height_cm: 0 })).toBeUndefined();
    expect(evaluate(DEFAULT_CATALOGUE.measure('ffm').formula, { ...M, r_ohm: 0 })).toBeUndefined();
  });

  test('skeletal muscle needs no weight, fat-free mass no age', () => {
    expect(DEFAULT_CATALOGUE.measure('smm').inputs).toEqual(['height_cm', 'r_ohm', 'age_years', 'sex_male']);
    expect(DEFAULT_CATALOGUE.measure('ffm').inputs).toEqual(['weight_kg', 'height_cm', 'r_ohm', 'xc_ohm', 'sex_male']);
  });
});
