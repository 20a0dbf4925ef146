import { describe, expect, test } from 'vitest';
import { DEFAULT_CATALOGUE } from '../../lib/measures/catalogue';
import { convertEnergy, kilocaloriesIn } from '../../lib/measures/energy';
import type { Branch, Equation, Term } from '../../lib/measures/equation';
import { ASM_MACDONALD_2006 } from '../../lib/measures/equations/asm-macdonald-2006';
import { ASM_SCAFOGLIERI_2017 } from '../../lib/measures/equations/asm-scafoglieri-2017';
import { FFM_DEURENBERG_1990 } from '../../lib/measures/equations/ffm-deurenberg-1990';
import { FFM_DEURENBERG_1991 } from '../../lib/measures/equations/ffm-deurenberg-1991';
import { PUBLISHED_EQUATIONS } from '../../lib/measures/equations/published-equations';
import { REE_SCHOFIELD_1985 } from '../../lib/measures/equations/ree-schofield-1985';
import { evaluate } from '../../lib/measures/evaluate';
import { equationOf, MAN, valueOf, WOMAN } from './equations-subjects';

const termsOf = ({ branches }: Equation): readonly Term[] =>
  branches.flatMap(({ terms, dividedBy }) => [...terms, ...(dividedBy?.terms ?? [])]);

const withCoefficient = (equation: Equation, regressor: Term['regressor'], coefficient: number): Equation => ({
  ...equation,
  branches: equation.branches.map((branch) => ({
    ...branch,
    terms: branch.terms.map((term) => (term.regressor === regressor ? { ...term, coefficient } : term)),
  })),
});

describe('height in metres or in centimetres', () => {
  // Int J Obes 1991;15:17–25: 0.340·10⁴·H²/R + 15.34·H + 0.273·W − 0.127·A + 4.56·sex − 12.44 with H in metres.
  const printed = 0.34 * 1e4 * (1.78 ** 2 / 480) + 15.34 * 1.78 + 0.273 * 80 - 0.127 * 40 + 4.56 - 12.44;

  test('Deurenberg 1991 in cm is the form that the paper prints in metres', () => {
    expect(valueOf(FFM_DEURENBERG_1991, MAN)).toBeCloseTo(printed, 9);
  });

  test('the coefficient for metres on a height in cm is far off', () => {
    expect(valueOf(withCoefficient(FFM_DEURENBERG_1991, 'height', 15.34), MAN) - printed).toBeGreaterThan(2000);
  });

  test('Deurenberg 1990 in cm²/Ω is the form with 10⁴·H²/R, and without the 10⁴ nothing is left of it', () => {
    // 0.671·10⁴·H²/R + 3.1·sex + 3.9 with H in metres, as printed in the compendium.
    const inMetres = 0.671 * 1e4 * (1.78 ** 2 / 480) + 3.1 + 3.9;
    expect(valueOf(FFM_DEURENBERG_1990, MAN)).toBeCloseTo(inMetres, 9);
    expect(valueOf(FFM_DEURENBERG_1990, { ...MAN, height_cm: 1.78 })).toBeLessThan(8);
  });

  test.each(
    PUBLISHED_EQUATIONS.filter((equation) =>
      termsOf(equation).some(({ regressor }) => regressor.startsWith('height')),
    ).map((equation) => [equation.id, equation] as const),
  )('%s changes by more than a tenth when the height is given in metres', (_, equation) => {
    const right = valueOf(equation, MAN);
    expect(Math.abs(valueOf(equation, { ...MAN, height_cm: 1.78 }) - right)).toBeGreaterThan(0.1 * right);
  });
});

describe('resistance per height', () => {
  const per = (id: 'r_h' | 'h2_r'): number => evaluate(DEFAULT_CATALOGUE.measure(id).formula, MAN) ?? NaN;

  test('is in Ω/m, a hundred times that in Ω/cm', () => {
    expect(per('r_h')).toBeCloseTo(100 * (480 / 178), 9);
    expect(per('r_h')).not.toBeCloseTo(480 / 178, 0);
  });

  test('gives the index H²/R in cm²/Ω: 10⁴ times that in m²/Ω', () => {
    expect(per('h2_r')).toBeCloseTo((1e4 * 1.78 ** 2) / 480, 9);
    expect(per('h2_r')).toBeCloseTo((100 * 178) / per('r_h'), 9);
  });
});

describe('the coding of sex', () => {
  const reversed = (equation: Equation): Equation => ({
    ...equation,
    sexCoding: equation.sexCoding.M === 1 ? { M: 0, F: 1 } : { M: 1, F: 0 },
  });
  const difference = (equation: Equation): number =>
    valueOf(equation, { ...MAN, sex_male: 1 }) - valueOf(equation, { ...MAN, sex_male: 0 });
  const coded = PUBLISHED_EQUATIONS.filter((equation) =>
    termsOf(equation).some(({ regressor }) => regressor === 'sex'),
  );

  test('is women 1 in Macdonald 2006 and Scafoglieri 2017 alone', () => {
    const womenOne = PUBLISHED_EQUATIONS.filter(({ sexCoding }) => sexCoding.F === 1).map(({ id }) => id);
    expect(womenOne).toEqual(['asm-macdonald-2006', 'asm-scafoglieri-2017']);
  });

  test.each([
    // As printed: −2.092 for women (compendium); −1.931 for women (from memory).
    [ASM_MACDONALD_2006, 2.092, '24.5039'],
    [ASM_SCAFOGLIERI_2017, 1.931, '24.3544'],
  ] as const)(
    '$id puts the man above a woman of the same body, and reversed misses the worked value',
    (equation, by, worked) => {
      expect(difference(equation)).toBeCloseTo(by, 9);
      expect(difference(reversed(equation))).toBeCloseTo(-by, 9);
      expect(valueOf(equation, MAN).toFixed(4)).toBe(worked);
      expect(valueOf(reversed(equation), MAN).toFixed(4)).not.toBe(worked);
    },
  );

  test.each(coded.map((equation) => [equation.id, equation] as const))(
    '%s gives a man more than a woman of the same body',
    (_, equation) => {
      expect(difference(equation)).toBeGreaterThan(0);
    },
  );

  test('is met by equations with a form for each sex', () => {
    for (const id of ['ffm-rush-2006', 'tbw-watson-1980', 'ree-harris-benedict-1919', 'ree-roza-shizgal-1984'])
      expect(valueOf(equationOf(id), MAN), id).not.toBe(valueOf(equationOf(id), { ...MAN, sex_male: 0 }));
  });
});

// The same table in kJ/d: weight coefficient, constant and standard error by band, men then women (the encyclopedia's table).
const SCHOFIELD_KILOJOULES: readonly (readonly [weight: number, constant: number, error: number])[] = [
  [249, -127, 292],
  [95, 2110, 280],
  [74, 2754, 441],
  [63, 2896, 641],
  [48, 3653, 700],
  [49, 2459, 686],
  [244, -130, 246],
  [85, 2033, 292],
  [56, 2898, 466],
  [62, 2036, 497],
  [34, 3538, 465],
  [38, 2755, 451],
];

describe('kilojoules or kilocalories', () => {
  const weightOf = (branch: Branch): number => branch.terms[0]?.coefficient ?? NaN;

  test('both tables of Schofield agree within the rounding of their digits', () => {
    expect(REE_SCHOFIELD_1985.unit).toBe('kcal/d');
    expect(REE_SCHOFIELD_1985.branches).toHaveLength(SCHOFIELD_KILOJOULES.length);
    SCHOFIELD_KILOJOULES.forEach(([weight, constant], band) => {
      const branch = REE_SCHOFIELD_1985.branches[band];
      if (branch === undefined) throw new Error('no band');
      expect(Math.abs(4.184 * weightOf(branch) - weight)).toBeLessThan(0.5 + 0.0005 * 4.184);
      expect(Math.abs(4.184 * branch.intercept - constant)).toBeLessThan(0.5 + 0.05 * 4.184);
    });
  });

  test('so do their standard errors', () => {
    const errors = (REE_SCHOFIELD_1985.fit.words ?? '').match(/\d+/g)?.map(Number) ?? [];
    expect(errors).toHaveLength(SCHOFIELD_KILOJOULES.length);
    SCHOFIELD_KILOJOULES.forEach(([, , error], band) => {
      expect(Math.abs(4.184 * (errors[band] ?? NaN) - error)).toBeLessThan(0.5 + 0.5 * 4.184);
    });
  });

  test('the table in kJ gives 7493 and 5748 kJ/d, the one in kcal the same energy, never the same number', () => {
    const inKilojoules: Equation = {
      ...REE_SCHOFIELD_1985,
      unit: 'kJ/d',
      branches: REE_SCHOFIELD_1985.branches.map((branch, band) => ({
        ...branch,
        intercept: SCHOFIELD_KILOJOULES[band]?.[1] ?? NaN,
        terms: [{ coefficient: SCHOFIELD_KILOJOULES[band]?.[0] ?? NaN, regressor: 'weight' as const }],
      })),
    };
    expect([valueOf(inKilojoules, MAN), valueOf(inKilojoules, WOMAN)]).toEqual([7493, 5748]);
    for (const subject of [MAN, WOMAN]) {
      const kilocalories = valueOf(REE_SCHOFIELD_1985, subject);
      expect(Math.abs(convertEnergy(valueOf(inKilojoules, subject), 'kJ/d', 'kcal/d') - kilocalories)).toBeLessThan(1);
      expect(valueOf(inKilojoules, subject)).toBeGreaterThan(4 * kilocalories);
    }
  });

  test('every equation of resting expenditure gives the man 1500 to 1900 kcal/d in its own unit', () => {
    for (const equation of PUBLISHED_EQUATIONS.filter(({ quantity }) => quantity === 'ree')) {
      const inKilocalories = valueOf(equation, MAN) * (kilocaloriesIn(equation.unit) ?? NaN);
      expect(inKilocalories, equation.id).toBeGreaterThan(1500);
      expect(inKilocalories, equation.id).toBeLessThan(1900);
    }
  });

  test('the two constants of Müller 2004 differ by 24 kcal/d', () => {
    expect(convertEnergy(3.31 - 3.21, 'MJ/d', 'kcal/d').toFixed(0)).toBe('24');
  });
});
