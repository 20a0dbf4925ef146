import { describe, expect, test } from 'vitest';
import { ASM_KYLE_2003 } from '../../lib/measures/equations/asm-kyle-2003';
import { PUBLISHED_EQUATIONS } from '../../lib/measures/equations/published-equations';
import { SPREAD_BETWEEN_EQUATIONS } from '../../lib/measures/equations/shared-cautions';
import { evaluate } from '../../lib/measures/evaluate';
import { equationExpression } from '../../lib/measures/equation';
import type { Inputs } from '../../lib/measures/input-id';
import { equationOf, MAN, valueOf, WOMAN } from './equations-subjects';

// Each number is the arithmetic of the published formula for the two invented subjects, done in another language from
// the formula as printed in the source that the equation's own citation and note name, not from this project's data.
const WORKED: readonly (readonly [id: string, man: string, woman: string])[] = [
  ['ffm-kyle-2001', '59.5573', '42.3757'],
  ['ffm-deurenberg-1991', '58.6280', '40.8605'],
  ['ffm-deurenberg-1990', '51.2916', '35.3965'],
  ['ffm-rush-2006', '62.1532', '39.7215'],
  ['ffm-taiwan-2015', '57.9160', '38.6066'],
  ['ffm-lukaski-1985', '58.8207', '42.7605'],
  ['ffm-wang-2014', '62.3863', '46.1017'],
  ['ffm-hofsteenge-2015', '57.2020', '42.6547'],
  ['ffm-japanese-boys-1994', '54.4096', '40.8288'],
  ['ffm-sun-2003', '60.5194', '43.3410'],
  ['ffm-sun-2003-two-decimals', '62.6254', '45.5084'],
  ['ffm-lukaski-1986', '58.8033', '43.0584'],
  ['ffm-lukaski-bolonchuk-1987', '59.6761', '43.2437'],
  ['ffm-segal-1988', '61.1120', '43.9052'],
  ['ffm-dey-2003', '58.8872', '43.9129'],
  ['ffm-roubenoff-1997', '56.2354', '39.3010'],
  ['ffm-houtkooper-1992', '61.5751', '46.1932'],
  ['ffm-horlick-2002', '98.9614', '80.1629'],
  ['ffm-schaefer-1994', '70.2554', '61.2608'],
  ['smm-janssen-2000', '32.5563', '20.7298'],
  ['asm-kyle-2003', '25.4582', '17.1469'],
  ['asm-yoshida-2014', '27.3046', '18.8597'],
  ['asm-macdonald-2006', '24.5039', '15.6915'],
  ['asm-kim-2014', '17.8819', '11.8697'],
  ['asm-sergi-2015', '23.3319', '16.3863'],
  ['asm-scafoglieri-2017', '24.3544', '17.2909'],
  ['asm-rangel-peniche-2015', '23.6566', '15.4086'],
  ['tbw-kushner-1992', '44.1849', '31.9594'],
  ['tbw-lukaski-bolonchuk-1988', '40.4351', '27.8462'],
  ['tbw-watson-1980', '44.6538', '31.5705'],
  ['tbw-sun-2003', '44.9207', '32.2148'],
  ['tbw-sun-2003-two-decimals', '45.3038', '32.0228'],
  ['tbw-horlick-2002', '43.2790', '32.1213'],
  ['tbw-kushner-schoeller-1986', '45.9783', '33.0709'],
  ['ecw-lukaski-bolonchuk-1988', '17.5437', '13.1826'],
  ['ree-mifflin-1990', '1719.90', '1298.20'],
  ['ree-mifflin-1990-rounded', '1717.50', '1295.25'],
  ['ree-mifflin-1990-ffm', '1586.2791', '1247.8021'],
  ['ree-harris-benedict-1919', '1786.9884', '1371.4985'],
  ['ree-roza-shizgal-1984', '1787.264', '1364.968'],
  ['ree-schofield-1985', '1790.86', '1373.79'],
  ['ree-henry-2005', '1737.98', '1348.40'],
  ['ree-henry-2005-weight', '1729.00', '1327.10'],
  ['ree-cunningham-1980', '1810.26', '1432.27'],
  ['ree-cunningham-1991', '1656.44', '1285.32'],
  ['ree-mueller-2004', '7.3982', '5.6116'],
  ['ree-mueller-2004-composition', '7.3059', '5.5738'],
  ['ree-nelson-1992', '6767.8248', '5243.4072'],
];

const decimalsOf = (printed: string): number => printed.split('.')[1]?.length ?? 0;

describe('the published equations on two invented subjects', () => {
  test.each(WORKED)('%s gives %s for the man and %s for the woman', (id, man, woman) => {
    const equation = equationOf(id);
    expect(valueOf(equation, MAN).toFixed(decimalsOf(man))).toBe(man);
    expect(valueOf(equation, WOMAN).toFixed(decimalsOf(woman))).toBe(woman);
  });

  test('leave none without a worked value', () => {
    expect(WORKED.map(([id]) => id).sort()).toEqual(PUBLISHED_EQUATIONS.map(({ id }) => id).sort());
  });

  test('spread over fat-free masses as wide as their caution says', () => {
    const values = PUBLISHED_EQUATIONS.filter(({ cautions }) => cautions.includes(SPREAD_BETWEEN_EQUATIONS)).map(
      (equation) => valueOf(equation, MAN),
    );
    const range = `${Math.min(...values).toFixed(0)}–${Math.max(...values).toFixed(0)} kg`;
    expect(SPREAD_BETWEEN_EQUATIONS).toContain(range);
  });

  test('agree on fat-free mass of a child made up of plausible values', () => {
    // Formulas of Horlick 2002, Houtkooper 1992, Schaefer 1994 (from memory) and Wang 2014 (abstract), worked outside this code.
    const boy: Inputs = { weight_kg: 40, height_cm: 145, age_years: 12, sex_male: 1, r_ohm: 600, xc_ohm: 60 };
    expect(valueOf(equationOf('ffm-horlick-2002'), boy).toFixed(4)).toBe('34.2917');
    expect(valueOf(equationOf('ffm-horlick-2002'), { ...boy, sex_male: 0 }).toFixed(4)).toBe('33.4616');
    expect(valueOf(equationOf('ffm-houtkooper-1992'), boy).toFixed(4)).toBe('32.6854');
    expect(valueOf(equationOf('ffm-schaefer-1994'), boy).toFixed(4)).toBe('31.0871');
    expect(valueOf(equationOf('ffm-wang-2014'), boy).toFixed(4)).toBe('33.5249');
  });
});

describe('published means', () => {
  test('of volunteers lie near the appendicular mass of Kyle 2003 only with the two minus signs', () => {
    // Reported means by the equation: 25.7 kg (men), 17.2 kg (women); Clin Nutr 2003;22:537–543, first page.
    expect(Math.abs(valueOf(ASM_KYLE_2003, MAN) - 25.7)).toBeLessThan(1);
    expect(Math.abs(valueOf(ASM_KYLE_2003, WOMAN) - 17.2)).toBeLessThan(1);
    const [branch] = ASM_KYLE_2003.branches;
    if (branch === undefined) throw new Error('no branch');
    const positive = valueOf({ ...ASM_KYLE_2003, branches: [{ ...branch, intercept: -branch.intercept }] }, MAN);
    expect(Math.abs(positive - 25.7)).toBeGreaterThan(8);
  });

  test('of adolescents with obesity come out of their own equation', () => {
    // Mean height 1.66 m, weight 94.3 kg, R 505.2 and Xc 62.6 Ω, FFM by DXA 56.1 kg; BMC Pediatr 2015,
    // doi 10.1186/s12887-015-0476-7, table of subjects.
    const mean: Inputs = { weight_kg: 94.3, height_cm: 166, r_ohm: 505.2, xc_ohm: 62.6 };
    expect(Math.abs(valueOf(equationOf('ffm-hofsteenge-2015'), mean) - 56.1)).toBeLessThan(1);
  });
});

describe('bands of age', () => {
  const banded = PUBLISHED_EQUATIONS.filter(({ branches }) =>
    branches.some(({ ageFrom, ageBelow }) => ageFrom !== undefined || ageBelow !== undefined),
  );

  test('are those of Schofield and Henry', () => {
    expect(banded.map(({ id }) => id)).toEqual(['ree-schofield-1985', 'ree-henry-2005', 'ree-henry-2005-weight']);
  });

  test.each(banded.map((equation) => [equation.id, equation] as const))(
    '%s: an edge belongs to the older band, and no age between the first and the last edge is left out',
    (_, equation) => {
      for (const sex of ['M', 'F'] as const) {
        const bands = equation.branches.filter((branch) => branch.sex === sex);
        const inputs: Inputs = { weight_kg: 70, height_cm: 170, sex_male: sex === 'M' ? 1 : 0 };
        bands.forEach((band, index) => {
          const alone = { ...equation, branches: [{ intercept: band.intercept, terms: band.terms }] };
          expect(band.ageFrom).toBe(index === 0 ? band.ageFrom : bands[index - 1]?.ageBelow);
          if (band.ageFrom !== undefined)
            expect(valueOf(equation, { ...inputs, age_years: band.ageFrom })).toBe(valueOf(alone, inputs));
          if (band.ageBelow !== undefined)
            expect(valueOf(equation, { ...inputs, age_years: band.ageBelow - 0.001 })).toBe(valueOf(alone, inputs));
        });
        expect(bands.at(-1)?.ageBelow).toBeUndefined();
      }
    },
  );

  test('give different results on both sides of thirty years, so that a wrong edge shows', () => {
    const schofield = equationOf('ree-schofield-1985');
    const at = (age: number): number => valueOf(schofield, { weight_kg: 80, sex_male: 1, age_years: age });
    expect(at(30).toFixed(2)).toBe((11.472 * 80 + 873.1).toFixed(2));
    expect(at(29.999).toFixed(2)).toBe((15.057 * 80 + 692.2).toFixed(2));
  });

  test('of Henry give nothing before eighteen', () => {
    const inputs: Inputs = { weight_kg: 60, height_cm: 170, sex_male: 1, age_years: 17.99 };
    expect(evaluate(equationExpression(equationOf('ree-henry-2005')), inputs)).toBeUndefined();
    expect(evaluate(equationExpression(equationOf('ree-henry-2005-weight')), inputs)).toBeUndefined();
  });

  test('give nothing where age or sex is unknown', () => {
    const schofield = equationExpression(equationOf('ree-schofield-1985'));
    expect(evaluate(schofield, { weight_kg: 80, sex_male: 1 })).toBeUndefined();
    expect(evaluate(schofield, { weight_kg: 80, age_years: 40 })).toBeUndefined();
  });
});
