import { describe, expect, test } from 'vitest';
import { citationLine } from '../../lib/measures/citation';
import { equationNotation } from '../../lib/measures/equation-notation';
import {
  equationExpression,
  QUANTITIES,
  type Equation,
  type EquationUnit,
  type Quantity,
} from '../../lib/measures/equation';
import { PUBLISHED_EQUATIONS } from '../../lib/measures/equations/published-equations';
import { evaluate } from '../../lib/measures/evaluate';
import { MAN } from './equations-subjects';

const UNITS: Readonly<Record<Quantity, readonly EquationUnit[]>> = {
  ffm: ['kg'],
  smm: ['kg'],
  asm: ['kg'],
  tbw: ['L'],
  ecw: ['L'],
  ree: ['kcal/d', 'kJ/d', 'MJ/d'],
};

const IMPEDANCE = /resistance|impedance|reactance/;

const regressorsOf = ({ branches }: Equation): readonly string[] =>
  branches.flatMap(({ terms, dividedBy }) => [...terms, ...(dividedBy?.terms ?? [])].map(({ regressor }) => regressor));

describe('the list of published equations', () => {
  test('holds every id once, and no name twice for one quantity', () => {
    const ids = PUBLISHED_EQUATIONS.map(({ id }) => id);
    const names = PUBLISHED_EQUATIONS.map(({ quantity, name }) => `${quantity} ${name}`);
    expect(new Set(ids).size).toBe(ids.length);
    expect(new Set(names).size).toBe(names.length);
  });

  test('is ordered by quantity, the read ones before those from memory', () => {
    const places = PUBLISHED_EQUATIONS.map(
      ({ quantity, verification }) => QUANTITIES.indexOf(quantity) * 2 + (verification === 'from-memory' ? 1 : 0),
    );
    expect(places).toEqual([...places].sort((one, other) => one - other));
  });

  test('has something read in a source for every quantity', () => {
    for (const quantity of QUANTITIES)
      expect(
        PUBLISHED_EQUATIONS.some(
          (equation) => equation.quantity === quantity && equation.verification !== 'from-memory',
        ),
        quantity,
      ).toBe(true);
  });

  test('names one work by one key', () => {
    const lines = new Map<string, string>();
    for (const { citation } of PUBLISHED_EQUATIONS) {
      const line = JSON.stringify(citation);
      expect(lines.get(citation.id) ?? line).toBe(line);
      lines.set(citation.id, line);
    }
  });

  test('marks as from memory exactly those that were not read', () => {
    expect(
      PUBLISHED_EQUATIONS.filter(({ verification }) => verification === 'from-memory').map(({ id }) => id),
    ).toEqual([
      'ffm-sun-2003',
      'ffm-sun-2003-two-decimals',
      'ffm-lukaski-1986',
      'ffm-lukaski-bolonchuk-1987',
      'ffm-segal-1988',
      'ffm-dey-2003',
      'ffm-roubenoff-1997',
      'ffm-houtkooper-1992',
      'ffm-horlick-2002',
      'ffm-schaefer-1994',
      'asm-kyle-2003',
      'asm-sergi-2015',
      'asm-scafoglieri-2017',
      'asm-rangel-peniche-2015',
      'tbw-sun-2003',
      'tbw-sun-2003-two-decimals',
      'tbw-horlick-2002',
      'tbw-kushner-schoeller-1986',
      'ree-henry-2005-weight',
    ]);
  });
});

describe.each(PUBLISHED_EQUATIONS.map((equation) => [equation.id, equation] as const))('%s', (_, equation) => {
  const { branches, population, citation } = equation;

  test('is named by quantity, has a unit of it, and a notation', () => {
    expect(equation.id).toMatch(new RegExp(`^${equation.quantity}-[a-z0-9]+(-[a-z0-9]+)*$`));
    expect(equation.name).toContain(String(citation.year));
    expect(UNITS[equation.quantity]).toContain(equation.unit);
    expect(equation.version).toBe(1);
    expect(equationNotation(equation)).not.toBe('');
  });

  test('says where it was read and whether it must be checked before use', () => {
    expect(['read-in-abstract', 'read-in-secondary-text', 'from-memory']).toContain(equation.verification);
    expect(equation.verificationNote).toMatch(/\.$/);
    expect(/check .*against the paper before use/i.test(equation.verificationNote)).toBe(
      equation.verification === 'from-memory',
    );
  });

  test('cites its work with a year', () => {
    const line = citationLine(citation);
    expect(line).toContain(String(citation.year));
    expect(citation.year).toBeGreaterThanOrEqual(1900);
    expect(line).not.toMatch(/ {2}|^ |\.\.|undefined/);
    expect(citation.authors.length > 0 || citation.doi !== undefined || citation.url !== undefined).toBe(true);
  });

  test('has cautions that are sentences', () => {
    for (const caution of equation.cautions) expect(caution).toMatch(/^\S.*\.$/);
  });

  test('says for whom it was made, in ranges that are ordered', () => {
    expect(population.description.trim()).not.toBe('');
    expect(equation.referenceMethod.trim()).not.toBe('');
    for (const range of [population.ageYears, population.bmi])
      if (range !== undefined) expect(range[0]).toBeLessThan(range[1]);
    if (population.n !== undefined) expect(population.n).toBeGreaterThan(0);
    if (population.ageYears !== undefined) expect(population.ageFrom).toBeUndefined();
    for (const figure of population.fromMemory ?? []) expect(population[figure]).toBeDefined();
  });

  test('has a path, a frequency and a posture exactly where it needs impedance', () => {
    const needsImpedance = regressorsOf(equation).some((regressor) => IMPEDANCE.test(regressor));
    expect(equation.electrodePath !== null).toBe(needsImpedance);
    expect(equation.frequencyKhz !== null).toBe(needsImpedance);
    expect(equation.posture !== null).toBe(needsImpedance);
  });

  test('has no term twice and no coefficient of zero', () => {
    for (const { terms, dividedBy, ageFrom, ageBelow } of branches) {
      for (const form of [terms, dividedBy?.terms ?? []]) {
        expect(new Set(form.map(({ regressor }) => regressor)).size).toBe(form.length);
        for (const { coefficient } of form) expect(coefficient).not.toBe(0);
      }
      if (ageFrom !== undefined && ageBelow !== undefined) expect(ageFrom).toBeLessThan(ageBelow);
    }
  });

  test('gives a result for both sexes at an age that it was made for', () => {
    const [from, to] = population.ageYears ?? [population.ageFrom ?? 30, (population.ageFrom ?? 30) + 10];
    for (const sex_male of population.sex === 'M' ? [1] : population.sex === 'F' ? [0] : [0, 1])
      for (const age_years of [from, (from + to) / 2, to]) {
        const value = evaluate(equationExpression(equation), { ...MAN, sex_male, age_years });
        expect(Number.isFinite(value), `${String(sex_male)} ${String(age_years)}`).toBe(true);
      }
  });

  test('never codes sex inside a form for one sex', () => {
    for (const { sex, terms } of branches)
      if (sex !== undefined) expect(terms.map(({ regressor }) => regressor)).not.toContain('sex');
  });
});

describe('electrode paths', () => {
  test('hold the foot-to-foot equation apart from all others', () => {
    const other = PUBLISHED_EQUATIONS.filter(
      ({ electrodePath }) => electrodePath !== null && electrodePath !== 'hand-to-foot',
    );
    expect(other.map(({ id, electrodePath, posture }) => [id, electrodePath, posture])).toEqual([
      ['ffm-taiwan-2015', 'foot-to-foot', 'standing'],
    ]);
  });

  test('hold the equation for 250 kHz apart from those for 50 kHz', () => {
    const other = PUBLISHED_EQUATIONS.filter(({ frequencyKhz }) => frequencyKhz !== null && frequencyKhz !== 50);
    expect(other.map(({ id, frequencyKhz }) => [id, frequencyKhz])).toEqual([['asm-kim-2014', 250]]);
  });
});

// Words for descent that the descriptions use: who reads a group by a field finds all of them there.
test('an equation whose group is described by descent names it as its ancestry', () => {
  const byDescent = /\b(white|black|Asian|Indian|Chinese|Japanese|Korean|Taiwanese)\b/i;
  const described = PUBLISHED_EQUATIONS.filter(({ population }) => byDescent.test(population.description));
  expect(described.length).toBeGreaterThan(7);
  for (const { id, population } of described) expect(population.ancestry, id).toMatch(byDescent);
});
