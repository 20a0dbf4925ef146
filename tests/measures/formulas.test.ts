import { describe, expect, test } from 'vitest';
import { convertEnergy } from '../../lib/measures/energy';
import { evaluate } from '../../lib/measures/evaluate';
import { FORMULAS } from '../../lib/measures/formulas';
import type { Inputs } from '../../lib/measures/input-id';

const value = (id: string, inputs: Inputs): number | undefined => {
  const found = FORMULAS.find((formula) => formula.id === id);
  if (found === undefined) throw new Error(`no formula ${id}`);
  return evaluate(found.formula, inputs);
};

// Two invented subjects; the expected values are arithmetic of the formulas, worked out outside this code.
const M: Inputs = { height_cm: 178, r_ohm: 480, xc_ohm: 52, weight_kg: 80 };
const F: Inputs = { height_cm: 165, r_ohm: 580, xc_ohm: 55, weight_kg: 65 };

describe('formulas beside the values that are followed', () => {
  test.each([
    ['parallel-resistance', 485.6333, 585.2155],
    ['parallel-reactance', 4482.7692, 6171.3636],
    ['parallel-capacitance', 0.7101, 0.5158],
  ])('%s of a series circuit is %d and %d', (id, male, female) => {
    expect(value(id, M)).toBeCloseTo(male, 4);
    expect(value(id, F)).toBeCloseTo(female, 4);
  });

  test('skeletal muscle of 32.5563 kg is 40.6954 % of 80 kg', () => {
    expect(value('muscle-share', { smm_kg: 32.5563, weight_kg: 80 })).toBeCloseTo(40.6954, 4);
  });

  // Arithmetic of 39.5 MJ/kg of fat and 7.6 MJ/kg of fat-free tissue: −4 kg and −1 kg are −165.6 MJ or −39 579 kcal.
  test('four kilograms of fat and one of lean tissue lost hold 165.6 MJ, and other energy when exchanged', () => {
    const change = value('tissue-energy', { fm_change_kg: -4, ffm_change_kg: -1 }) ?? Number.NaN;
    expect(change).toBeCloseTo(-165.6, 9);
    expect(Math.round(convertEnergy(change, 'MJ/d', 'kcal/d'))).toBe(-39579);
    expect(value('tissue-energy', { fm_change_kg: -1, ffm_change_kg: -4 })).toBeCloseTo(-69.9, 9);
  });

  // 7700 kcal of 4.184 kJ are 32.2168 MJ: the source prints 32.2.
  test('the rule for a weight change gives the energy of a kilogram, in the unit of the other', () => {
    const kilogram = value('weight-change-energy', { weight_change_kg: -1 }) ?? Number.NaN;
    expect(kilogram).toBeCloseTo(-32.2168, 10);
    expect(convertEnergy(kilogram, 'MJ/d', 'kcal/d')).toBeCloseTo(-7700, 9);
  });

  // Arithmetic of Forbes' 10.4 / (10.4 + FM).
  test.each([
    [10, '0.5098'],
    [20, '0.3421'],
    [30, '0.2574'],
    [40, '0.2063'],
  ])('at %d kg of fat the lean share of a small change is %s', (fat, part) => {
    expect(((value('forbes-share', { fm_kg: fat }) ?? Number.NaN) / 100).toFixed(4)).toBe(part);
  });

  test('the lean share is all of it without fat, and unknown for a negative fat mass', () => {
    expect(value('forbes-share', { fm_kg: 0 })).toBe(100);
    expect(value('forbes-share', { fm_kg: -1 })).toBeUndefined();
  });

  // Arithmetic of 0.36·H²/R + 0.359·W + 4.5·sex − 20·thigh(m) + 7 with a thigh of 0.50 m.
  test('the equation with the thigh takes centimetres where the paper takes metres', () => {
    expect(value('fat-free-mass-with-thigh', { ...M, sex_male: 1, thigh_cm: 50 })).toBeCloseTo(53.983, 3);
    expect(value('fat-free-mass-with-thigh', { ...M, sex_male: 0, thigh_cm: 50 })).toBeCloseTo(49.483, 3);
  });

  // 189.7315 − 31.777 + 2.841 − 143.2, arithmetic of the formula.
  test('four compartments of an invented man leave 17.5955 kg of fat', () => {
    const inputs = { body_volume_l: 75.5, tbw_l: 43, bone_mineral_kg: 3, weight_kg: 80 };
    expect(value('four-compartment-fat', inputs)).toBeCloseTo(17.5955, 10);
  });

  test('water: the inner part is the rest, a share needs a whole', () => {
    expect(value('intracellular-water', { tbw_l: 40, ecw_l: 17 })).toBe(23);
    expect(value('extracellular-share', { tbw_l: 40, ecw_l: 17 })).toBe(42.5);
    expect(value('extracellular-to-intracellular', { tbw_l: 40, ecw_l: 17 })).toBeCloseTo(17 / 23, 12);
    expect(value('extracellular-to-intracellular', { tbw_l: 17, ecw_l: 17 })).toBeUndefined();
    expect(value('extracellular-share', { tbw_l: 0, ecw_l: 17 })).toBeUndefined();
    expect(value('water-from-fat-free-mass', { ffm_kg: 59.5573 })).toBeCloseTo(43.4768, 4);
  });

  test('each has an id of its own, a name, a notation and a source', () => {
    expect(new Set(FORMULAS.map(({ id }) => id)).size).toBe(FORMULAS.length);
    for (const { name, notation, source } of FORMULAS)
      expect([name, notation, source].every((text) => text !== '')).toBe(true);
  });
});
