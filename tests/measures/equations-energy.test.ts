import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  ACTIVITY_BANDS,
  activityBandOf,
  convertEnergy,
  FORBES_CONSTANT,
  kilocaloriesIn,
  TISSUE_ENERGY,
  totalEnergyExpenditure,
} from '../../lib/measures/energy';
import { equationOf, MAN, valueOf } from './equations-subjects';

describe('units of energy', () => {
  test('one kcal is 4.184 kJ and one MJ 239.0 kcal', () => {
    expect(convertEnergy(1, 'kcal/d', 'kJ/d')).toBeCloseTo(4.184, 12);
    expect(convertEnergy(1, 'MJ/d', 'kcal/d').toFixed(1)).toBe('239.0');
    expect(convertEnergy(1, 'MJ/d', 'kJ/d')).toBeCloseTo(1000, 9);
  });

  test('there and back is where it began', () => {
    const unit = fc.constantFrom('kcal/d' as const, 'kJ/d' as const, 'MJ/d' as const);
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 1e5, noNaN: true }), unit, unit, (value, from, to) => {
        expect(Math.abs(convertEnergy(convertEnergy(value, from, to), to, from) - value)).toBeLessThan(1e-9 * value);
      }),
      { seed: 20260304 },
    );
  });

  test('mass and volume have none', () => {
    expect([kilocaloriesIn('kg'), kilocaloriesIn('L')]).toEqual([undefined, undefined]);
    expect(kilocaloriesIn('kcal/d')).toBe(1);
  });

  test('the man of 7.3982 MJ/d by Müller 2004 spends 1768 kcal/d at rest', () => {
    const megajoules = valueOf(equationOf('ree-mueller-2004'), MAN);
    expect(convertEnergy(megajoules, 'MJ/d', 'kcal/d').toFixed(0)).toBe((7398.2 / 4.184).toFixed(0));
  });
});

describe('total energy expenditure', () => {
  test('is resting expenditure times the level of activity', () => {
    expect(totalEnergyExpenditure(1719.9, 1.5)).toBeCloseTo(2579.85, 9);
  });
});

// FAO/WHO/UNU 2004: 1.40–1.69, 1.70–1.99, 2.00–2.40, above 2.40 hard to sustain.
describe('bands of physical activity', () => {
  test.each([
    [1.39, undefined],
    [1.4, 'light'],
    [1.69, 'light'],
    [1.694, 'light'],
    [1.7, 'moderate'],
    [1.99, 'moderate'],
    [2, 'vigorous'],
    [2.4, 'vigorous'],
    [2.41, 'hard_to_sustain'],
    [3.5, 'hard_to_sustain'],
  ] as const)('a level of %s is %s', (level, activity) => {
    expect(activityBandOf(level)).toBe(activity);
  });

  test('leave no level of two decimals between them', () => {
    ACTIVITY_BANDS.value.forEach(({ from }, index) => {
      const before = ACTIVITY_BANDS.value[index - 1]?.to;
      if (before !== undefined) expect(from - before).toBeCloseTo(0.01, 9);
    });
    expect(ACTIVITY_BANDS.value.at(-1)?.to).toBeUndefined();
  });
});

describe('energy of tissue', () => {
  test('is about 9440 kcal a kilogram of fat and 1816 of fat-free mass', () => {
    // Printed beside the values in MJ in later texts; the first is rounded to tens there.
    expect(Math.abs(convertEnergy(TISSUE_ENERGY.value.fat, 'MJ/d', 'kcal/d') - 9440)).toBeLessThan(5);
    expect(Math.round(convertEnergy(TISSUE_ENERGY.value.fatFree, 'MJ/d', 'kcal/d'))).toBe(1816);
  });
});

describe('figures of energy', () => {
  test('name their source and were read in later texts', () => {
    for (const { source, verification } of [ACTIVITY_BANDS, TISSUE_ENERGY, FORBES_CONSTANT]) {
      expect(source).toMatch(/\b(19|20)\d\d\b/);
      expect(verification).toBe('read-in-secondary-text');
    }
  });
});
