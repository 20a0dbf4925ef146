import { KILOJOULES_PER_KILOCALORIE, type Ucum } from '../core/units';
import { FORBES_CONSTANT, TISSUE_ENERGY, WEIGHT_CHANGE_RULE } from './energy';
import type { Regressor, Verification } from './equation';
import { choose, constant, difference, input, product, quotient, sum, type Expression } from './expression';

/** A quantity of the trade that no visit is followed by: a formula with its source, for the calculator and the list. */
export interface Formula {
  readonly id: string;
  readonly name: string;
  /** What stands before the sign of equality. */
  readonly sign: string;
  readonly about: 'electrical' | 'muscle' | 'water' | 'fat-free' | 'energy';
  readonly unit: Ucum;
  readonly decimals: number;
  readonly formula: Expression;
  readonly notation: string;
  readonly source: string;
  readonly verification: Verification;
  readonly cautions: readonly string[];
  /** The term of equations that it is, where one reads it. */
  readonly regressor?: Regressor;
}

const resistance = input('r_ohm');
const reactance = input('xc_ohm');
const squares = sum(product(resistance, resistance), product(reactance, reactance));
const percent = (part: Expression, of: Expression): Expression => product(constant(100), quotient(part, of));

/** Quantities from methods of the trade beside the values that are followed. */
export const FORMULAS: readonly Formula[] = [
  {
    id: 'reactance-index',
    name: 'Reactance index',
    sign: 'index',
    about: 'electrical',
    unit: 'cm2/Ohm',
    decimals: 1,
    formula: quotient(product(input('height_cm'), input('height_cm')), reactance),
    notation: 'H² / Xc',
    source: 'used by Lukaski & Bolonchuk 1988 for extracellular water',
    verification: 'read-in-secondary-text',
    cautions: [],
    regressor: 'height2_per_reactance',
  },
  {
    id: 'parallel-resistance',
    name: 'Parallel resistance',
    sign: 'Rp',
    about: 'electrical',
    unit: 'Ohm',
    decimals: 1,
    formula: sum(resistance, quotient(product(reactance, reactance), resistance)),
    notation: 'R + Xc² / R',
    source: 'algebra of a series and a parallel circuit',
    verification: 'definition',
    cautions: [],
  },
  {
    id: 'parallel-reactance',
    name: 'Parallel reactance',
    sign: 'Xcp',
    about: 'electrical',
    unit: 'Ohm',
    decimals: 1,
    formula: sum(reactance, quotient(product(resistance, resistance), reactance)),
    notation: 'Xc + R² / Xc',
    source: 'algebra of a series and a parallel circuit',
    verification: 'definition',
    cautions: [],
  },
  {
    id: 'parallel-capacitance',
    name: 'Parallel capacitance at 50 kHz',
    sign: 'C',
    about: 'electrical',
    unit: 'nF',
    decimals: 4,
    formula: quotient(product(constant(1e9), reactance), product(constant(2 * Math.PI * 50_000), squares)),
    notation: 'Xc / (2π·f·(R² + Xc²))',
    source: 'algebra of a series and a parallel circuit',
    verification: 'definition',
    cautions: [],
  },
  {
    id: 'intracellular-water',
    name: 'Intracellular water',
    sign: 'ICW',
    about: 'water',
    unit: 'L',
    decimals: 1,
    formula: difference(input('tbw_l'), input('ecw_l')),
    notation: 'TBW − ECW',
    source: 'definition, read in a compendium that quotes Lukaski & Bolonchuk',
    verification: 'read-in-secondary-text',
    cautions: ['Both must come from one method: the error of a difference is larger than that of either.'],
  },
  {
    id: 'extracellular-share',
    name: 'Extracellular share of body water',
    sign: 'share',
    about: 'water',
    unit: '%',
    decimals: 1,
    formula: percent(input('ecw_l'), input('tbw_l')),
    notation: '100·ECW / TBW',
    source: 'definition, read in a compendium that quotes Lukaski & Bolonchuk',
    verification: 'read-in-secondary-text',
    cautions: ['Both must come from one method.'],
  },
  {
    id: 'extracellular-to-intracellular',
    name: 'Extracellular to intracellular water',
    sign: 'ratio',
    about: 'water',
    unit: '1',
    decimals: 2,
    formula: quotient(input('ecw_l'), difference(input('tbw_l'), input('ecw_l'))),
    notation: 'ECW / (TBW − ECW)',
    source: 'definition, read in a compendium that quotes Lukaski & Bolonchuk',
    verification: 'read-in-secondary-text',
    cautions: [
      'Both must come from one method: the error of a quotient of two estimates is larger than that of either.',
    ],
  },
  {
    id: 'water-from-fat-free-mass',
    name: 'Total body water from fat-free mass',
    sign: 'TBW',
    about: 'water',
    unit: 'L',
    decimals: 1,
    formula: product(constant(0.73), input('ffm_kg')),
    notation: '0.73·FFM',
    source: 'Pace N, Rathbun EN 1945 (0.730), quoted in a later table; 0.73 is used in a DXA comparison that was read',
    verification: 'read-in-secondary-text',
    cautions: ['Hydration differs between people and with illness: oedema, dialysis and growth break the constant.'],
  },
  {
    id: 'fat-free-mass-with-thigh',
    name: 'Deurenberg 1990, with the thigh',
    sign: 'FFM',
    about: 'fat-free',
    unit: 'kg',
    decimals: 1,
    formula: sum(
      constant(7),
      product(constant(0.36), quotient(product(input('height_cm'), input('height_cm')), resistance)),
      product(constant(0.359), input('weight_kg')),
      product(constant(4.5), input('sex_male')),
      product(constant(-0.2), input('thigh_cm')),
    ),
    notation: '7 + 0.36·H²/R + 0.359·W + 4.5·sex − 0.2·thigh',
    source:
      'Deurenberg P et al. 1990, first equation, read in a compendium; the year is from memory, the journal unknown',
    verification: 'read-in-secondary-text',
    cautions: [
      'Made for 35 men and 37 women of 60–83 years, lying, at least two hours after a meal. The paper takes the thigh in metres (−20); here it is in centimetres.',
      'The visit export holds no thigh, so no visit is computed by it.',
    ],
  },
  {
    id: 'four-compartment-fat',
    name: 'Fat mass by four compartments',
    sign: 'FM',
    about: 'fat-free',
    unit: 'kg',
    decimals: 1,
    formula: sum(
      product(constant(2.513), input('body_volume_l')),
      product(constant(-0.739), input('tbw_l')),
      product(constant(0.947), input('bone_mineral_kg')),
      product(constant(-1.79), input('weight_kg')),
    ),
    notation: '2.513·BV − 0.739·TBW + 0.947·BMC − 1.79·W',
    source: 'Heymsfield’s form, the reference of Sun 2003, read in a compendium',
    verification: 'read-in-secondary-text',
    cautions: [
      'Needs body volume, water by dilution and bone mineral from other methods: a reference, not a result of impedance.',
    ],
  },
  {
    id: 'muscle-share',
    name: 'Skeletal muscle share of weight',
    sign: 'share',
    about: 'muscle',
    unit: '%',
    decimals: 1,
    formula: percent(input('smm_kg'), input('weight_kg')),
    notation: '100·SMM / W',
    source: 'definition',
    verification: 'definition',
    cautions: [],
  },
  {
    id: 'tissue-energy',
    name: 'Energy content of a change of tissue',
    sign: 'ΔE',
    about: 'energy',
    unit: 'MJ',
    decimals: 0,
    formula: sum(
      product(constant(TISSUE_ENERGY.value.fat), input('fm_change_kg')),
      product(constant(TISSUE_ENERGY.value.fatFree), input('ffm_change_kg')),
    ),
    notation: '39.5·ΔFM + 7.6·ΔFFM',
    source: TISSUE_ENERGY.source,
    verification: TISSUE_ENERGY.verification,
    cautions: [
      'The energy of tissue that was lost or gained, not what a person ate or spent. A lean change by impedance can be water, which holds none.',
    ],
  },
  {
    id: 'weight-change-energy',
    name: 'Energy of a weight change by the rule of 7700 kcal a kilogram',
    sign: 'ΔE',
    about: 'energy',
    unit: 'MJ',
    decimals: 0,
    formula: product(
      constant((WEIGHT_CHANGE_RULE.value * KILOJOULES_PER_KILOCALORIE) / 1000),
      input('weight_change_kg'),
    ),
    notation: '7700·0.004184·ΔW',
    source: WEIGHT_CHANGE_RULE.source,
    verification: WEIGHT_CHANGE_RULE.verification,
    cautions: [
      'An average over mixed tissue, no constant: a kilogram of fat holds more, a kilogram of lean tissue less. Where both changes are known, the energy content of a change of tissue says more.',
    ],
  },
  {
    id: 'forbes-share',
    name: 'Expected lean share of a small weight change',
    sign: 'share',
    about: 'energy',
    unit: '%',
    decimals: 1,
    formula: choose({
      when: [{ input: 'fm_kg', from: 0 }],
      then: percent(constant(FORBES_CONSTANT.value), sum(constant(FORBES_CONSTANT.value), input('fm_kg'))),
    }),
    notation: '100·10.4 / (10.4 + FM)',
    source: FORBES_CONSTANT.source,
    verification: FORBES_CONSTANT.verification,
    cautions: [
      'A curve over people for small changes without special diet or exercise: no limit and no goal for one person.',
    ],
  },
];
