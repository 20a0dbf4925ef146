import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DEFAULT_CATALOGUE } from '../../lib/measures/catalogue';
import { derivative } from '../../lib/measures/derivative';
import { evaluate } from '../../lib/measures/evaluate';
import type { Inputs } from '../../lib/measures/input-id';

const MAN: Inputs = { height_cm: 178, weight_kg: 80, r_ohm: 480, xc_ohm: 52, age_years: 40, sex_male: 1, waist_cm: 92 };

const person = fc.record({
  height_cm: fc.double({ min: 140, max: 210, noNaN: true }),
  weight_kg: fc.double({ min: 40, max: 160, noNaN: true }),
  r_ohm: fc.double({ min: 250, max: 900, noNaN: true }),
  xc_ohm: fc.double({ min: 20, max: 90, noNaN: true }),
  age_years: fc.double({ min: 18, max: 90, noNaN: true }),
  sex_male: fc.constantFrom(0, 1),
  waist_cm: fc.double({ min: 60, max: 150, noNaN: true }),
});

describe('the derivative of a formula', () => {
  it('of fat-free mass by resistance is −0.518·H²/R² (Kyle 2001)', () => {
    const formula = derivative(DEFAULT_CATALOGUE.measure('ffm').formula, 'r_ohm');
    expect(evaluate(formula, MAN)).toBeCloseTo((-0.518 * 178 ** 2) / 480 ** 2, 12);
  });

  it.each(['r_ohm', 'xc_ohm', 'weight_kg', 'height_cm'] as const)(
    'by %s equals the central difference, for every value of the catalogue',
    (by) => {
      fc.assert(
        fc.property(person, (inputs) => {
          for (const { id, formula } of DEFAULT_CATALOGUE.all) {
            const at = (step: number): number | undefined => evaluate(formula, { ...inputs, [by]: inputs[by] + step });
            const [less, here, more] = [at(-1e-3), at(0), at(1e-3)];
            const slope = evaluate(derivative(formula, by), inputs);
            if (less === undefined || here === undefined || more === undefined) continue;
            const scale = Math.max(Math.abs(here) / Math.abs(inputs[by]), 1e-6);
            expect(Math.abs((slope ?? NaN) - (more - less) / 2e-3) / scale, id).toBeLessThan(1e-4);
          }
        }),
        { seed: 5, numRuns: 40 },
      );
    },
  );

  it('is unknown where an input is', () => {
    const formula = derivative(DEFAULT_CATALOGUE.measure('ffm').formula, 'r_ohm');
    expect(evaluate(formula, { height_cm: 178, sex_male: 1 })).toBeUndefined();
  });
});
