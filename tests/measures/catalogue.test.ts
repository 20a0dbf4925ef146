import { describe, expect, test } from 'vitest';
import { shownUnit, SI_UNITS } from '../../lib/core/units';
import { citationLine } from '../../lib/measures/citation';
import { basesOf } from '../../lib/cohort/basis';
import { catalogueFor, DEFAULT_CATALOGUE, DEFAULT_EQUATIONS } from '../../lib/measures/catalogue';
import { RULE_IDS, type ComparabilityRule } from '../../lib/measures/comparability-rule';
import { DEFAULT_RULES } from '../../lib/measures/default-rules';
import type { Equation, Regressor } from '../../lib/measures/equation';
import { FFM_KYLE_2001 } from '../../lib/measures/equations/ffm-kyle-2001';
import { FFM_HORLICK_2002 } from '../../lib/measures/equations/horlick-2002';
import { evaluate } from '../../lib/measures/evaluate';
import { input, sum } from '../../lib/measures/expression';
import { GUARD_CODES, guardBit, guardMask, guardsOf } from '../../lib/measures/guard';
import { INPUT_IDS, type Inputs } from '../../lib/measures/input-id';
import { inputsOf } from '../../lib/measures/inputs-of';
import { MEASURE_IDS, SUPPORT_IDS } from '../../lib/measures/measure-id';

const { all: ALL_MEASURES } = catalogueFor({ ...DEFAULT_EQUATIONS, geometryCorrected: true });

const equations = new Map<string, Equation>(
  DEFAULT_CATALOGUE.all.flatMap(({ equation }) => (equation === undefined ? [] : [[equation.id, equation]])),
);

describe('the catalogue of values', () => {
  test('holds every id once, in order', () => {
    const ids = ALL_MEASURES.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    const known: readonly string[] = [...MEASURE_IDS, ...SUPPORT_IDS];
    expect(ids).toEqual(known.filter((id) => ids.includes(id as (typeof ids)[number])));
  });

  test.each(ALL_MEASURES.map((measure) => [measure.id, measure] as const))(
    '%s has a name, a unit that can be shown, a formula, a source and its verification',
    (_, measure) => {
      expect(measure.name.trim()).not.toBe('');
      expect(measure.unit === '1' || shownUnit(measure.unit, SI_UNITS).label !== '').toBe(true);
      expect(measure.notation.trim()).not.toBe('');
      expect(measure.source.trim()).not.toBe('');
      if (DEFAULT_CATALOGUE.follows(measure.id))
        expect(['read-in-abstract', 'read-in-secondary-text', 'definition']).toContain(measure.verification);
      expect(measure.inputs.length).toBeGreaterThan(0);
      expect(measure.inputs).toEqual(inputsOf(measure.formula));
      expect(Number.isInteger(measure.decimals)).toBe(true);
    },
  );

  test('names no two values alike', () => {
    const names = ALL_MEASURES.map(({ name }) => name);
    expect(new Set(names).size).toBe(names.length);
  });

  test('rests every computed composition on an equation, and nothing else on one', () => {
    for (const { group, equation } of ALL_MEASURES) expect(equation !== undefined).toBe(group === 'composition');
  });

  test.each([...equations])('%s says for whom and how it was made', (_, equation) => {
    expect(equation.population.description).not.toBe('');
    expect(equation.population.ageYears?.[0]).toBeGreaterThanOrEqual(18);
    expect(['lying', 'standing']).toContain(equation.posture);
    expect(equation.electrodePath).toBe('hand-to-foot');
    expect(equation.frequencyKhz).toBe(50);
    expect(equation.referenceMethod).not.toBe('');
    expect(citationLine(equation.citation)).toMatch(/\b(19|20)\d\d;\d+/);
    expect(equation.verification).not.toBe('from-memory');
    for (const { terms } of equation.branches) {
      const regressors = terms.map(({ regressor }) => regressor);
      expect(new Set(regressors).size).toBe(regressors.length);
    }
  });
});

describe('the guards', () => {
  test('fit the bits of a mask, each its own', () => {
    expect(GUARD_CODES.length).toBeLessThanOrEqual(31);
    const bits = GUARD_CODES.map(guardBit);
    expect(bits.every((bit) => bit > 0)).toBe(true);
    expect(new Set(bits).size).toBe(GUARD_CODES.length);
    expect(guardMask(GUARD_CODES)).toBe(2 ** GUARD_CODES.length - 1);
  });

  test('of one value act in one way each', () => {
    for (const measure of ALL_MEASURES) {
      const { stop, hold, note } = guardsOf(measure);
      const all = [...stop, ...hold, ...note];
      expect(new Set(all).size).toBe(all.length);
    }
  });

  test('stop pregnancy and growth for every value', () => {
    for (const measure of ALL_MEASURES)
      expect(guardsOf(measure).stop).toEqual(expect.arrayContaining(['pregnancy', 'under_18']));
  });

  test('stop kilograms where fluid is collected, and judge weight and the electrical values', () => {
    for (const measure of ALL_MEASURES)
      expect([measure.id, guardsOf(measure).stop.includes('fluid')]).toEqual([
        measure.id,
        measure.group.startsWith('composition'),
      ]);
  });

  test('leave only weight and waist where the body differs from what an equation assumes', () => {
    expect(
      ALL_MEASURES.filter((measure) => !guardsOf(measure).stop.includes('body_geometry')).map(({ id }) => id),
    ).toEqual(['weight', 'waist', 'waist_height']);
  });
});

describe('the default rules of comparison', () => {
  test('are one for each id and at most thirty, one bit each', () => {
    expect(DEFAULT_RULES.map(({ id }) => id)).toEqual(RULE_IDS);
    expect(new Set(RULE_IDS).size).toBe(RULE_IDS.length);
    expect(DEFAULT_RULES.length).toBeLessThanOrEqual(30);
  });

  const said = ({ test: rule }: ComparabilityRule): string => {
    switch (rule.kind) {
      case 'below':
        return `${rule.column} below ${String(rule.limit)} h`;
      case 'is':
        return `${rule.column} is ${rule.spoiledBy}`;
      case 'differs':
        return `${rule.column} differs`;
      case 'height-differs':
        return `heights differ by more than ${String(rule.limit)} cm`;
      case 'dialysis-timing':
        return `hours since dialysis differ by more than ${String(rule.limit)} h`;
    }
  };

  // Common practice, no source: the clinic edits the table.
  test('grade as the standard conditions of a whole-body measurement ask for', () => {
    expect(DEFAULT_RULES.filter(({ grade }) => grade === 'no').map(said)).toEqual([
      'device_id differs',
      'device_software differs',
      'electrode_path differs',
      'posture differs',
      'side differs',
      'frequency_khz differs',
      'electrode_position differs',
      'fasted_h below 8 h',
      'contact_ok is n',
      'hours since dialysis differ by more than 1 h',
    ]);
    expect(DEFAULT_RULES.filter(({ grade }) => grade === 'caution').map(said)).toEqual([
      'since_exercise_h below 12 h',
      'since_alcohol_h below 12 h',
      'large_drink is y',
      'bladder_emptied is n',
      'rested is n',
      'acute_illness is y',
      'medication_changed is y',
      'menstrual_phase differs',
      'height_source differs',
      'weight_source differs',
      'heights differ by more than 1.5 cm',
    ]);
    expect(DEFAULT_RULES.filter(({ grade }) => grade === 'note' || grade === 'off')).toEqual([]);
  });

  test('look at device software only for what the device computed', () => {
    expect(DEFAULT_RULES.filter(({ onlyExported }) => onlyExported === true).map(({ id }) => id)).toEqual(['software']);
  });

  test('let a written procedure stand for a condition of the visit, never for a label or a stop', () => {
    expect(DEFAULT_RULES.filter(({ procedure }) => procedure).map(({ id }) => id)).toEqual([
      ...[
        'fasting',
        'contact',
        'exercise',
        'alcohol',
        'large_drink',
        'bladder',
        'rested',
        'acute_illness',
        'medication',
      ],
    ]);
  });
});

describe('fat-free mass without its weight term', () => {
  const inForce = (ffm: Equation) => catalogueFor({ ...DEFAULT_EQUATIONS, ffm }).measure('ffm_without_weight').formula;

  // Arithmetic of Horlick 2002: (3.474 + 0.459·RI) / (0.769 − 0.009·12 − 0.016), RI = 145² / 600.
  test('leaves out what the weight adds where the whole is divided', () => {
    const boy: Inputs = { height_cm: 145, age_years: 12, sex_male: 1, r_ohm: 600, xc_ohm: 60 };
    expect(evaluate(inForce(FFM_HORLICK_2002), { ...boy, weight_kg: 40 })).toBeCloseTo(
      (3.474 + (0.459 * 145 ** 2) / 600) / 0.645,
      9,
    );
    expect(evaluate(inForce(FFM_HORLICK_2002), boy)).toBeUndefined();
  });

  test('takes the weight term of the age band', () => {
    const term = (coefficient: number) => ({
      intercept: 3,
      terms: [{ coefficient, regressor: 'weight' as const }],
    });
    const banded: Equation = {
      ...FFM_KYLE_2001,
      branches: [
        { ageBelow: 60, ...term(0.5) },
        { ageFrom: 60, ...term(0.25) },
      ],
    };
    for (const age_years of [40, 70]) expect(evaluate(inForce(banded), { weight_kg: 80, age_years })).toBe(3);
  });
});

describe('what a visit must hold', () => {
  const withTerms = (quantity: Equation['quantity'], F: Regressor, M: Regressor): Equation => ({
    ...FFM_KYLE_2001,
    quantity,
    branches: [
      { sex: 'F', intercept: 0, terms: [{ coefficient: 1, regressor: F }] },
      { sex: 'M', intercept: 0, terms: [{ coefficient: 1, regressor: M }] },
    ],
  });

  test('fits into the bits of an INTEGER with everything in force and as different as can be', () => {
    const { all } = catalogueFor({
      ffm: withTerms('ffm', 'reactance', 'age'),
      smm: withTerms('smm', 'age', 'resistance'),
      asm: withTerms('asm', 'resistance', 'reactance'),
      tbw: withTerms('tbw', 'weight', 'age'),
      ecw: withTerms('ecw', 'weight', 'reactance'),
      geometryCorrected: true,
    });
    const { length } = basesOf(all).list;
    expect(length).toBeGreaterThanOrEqual(29);
    expect(length).toBeLessThanOrEqual(31);
  });

  test('is an error where there are more kinds of it than bits', () => {
    const [weight] = DEFAULT_CATALOGUE.all;
    if (weight === undefined) throw new Error('no value');
    const sums = Array.from({ length: 32 }, (_, place) => ({
      ...weight,
      formula: sum(...INPUT_IDS.filter((_, at) => ((place + 1) & (1 << at)) !== 0).map(input)),
    }));
    expect(basesOf(sums.slice(0, 31)).list).toHaveLength(31);
    expect(() => basesOf(sums)).toThrow(RangeError);
  });
});
