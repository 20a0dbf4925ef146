import { describe, expect, test } from 'vitest';
import { SI_UNITS, shownUnit, type UnitPreference } from '../../lib/core/units';

const IMPERIAL: UnitPreference = { mass: 'lb', length: 'ft-in', energy: 'kJ' };

describe('a unit', () => {
  // 1 lb = 0.45359237 kg and 1 in = 2.54 cm exactly (international yard and pound agreement, 1959); 1 kcal = 4.184 kJ, thermochemical.
  test('is converted by its exact factor', () => {
    expect(1 / shownUnit('kg', IMPERIAL).factor).toBeCloseTo(0.45359237, 15);
    expect(shownUnit('cm', IMPERIAL).factor * 2.54).toBeCloseTo(1, 15);
    expect(shownUnit('kcal/d', IMPERIAL).factor).toBe(4.184);
    expect(shownUnit('kg', IMPERIAL).factor * 0.45359237 * 100).toBeCloseTo(100, 12);
  });

  test('stays itself where nothing else is preferred', () => {
    for (const unit of ['kg', 'cm', 'kcal/d', 'Ohm', 'deg', 'L', '%', 'm', 'a', '1'] as const)
      expect(shownUnit(unit, SI_UNITS).factor).toBe(1);
  });

  test('of electricity and of an index has one form for everyone', () => {
    for (const unit of ['Ohm', 'Ohm/m', 'cm2/Ohm', 'deg', 'kg/m2', '%', 'L'] as const)
      expect(shownUnit(unit, IMPERIAL)).toEqual(shownUnit(unit, SI_UNITS));
  });
});
