import type { Citation } from '../citation';
import type { Equation, Population } from '../equation';
import { SPREAD_BETWEEN_EQUATIONS } from './shared-cautions';

const CITATION: Citation = {
  id: 'sun-2003',
  authors: ['Sun SS', 'Chumlea WC', 'Heymsfield SB'],
  andOthers: true,
  journal: 'Am J Clin Nutr',
  year: 2003,
  volume: '77',
  issue: '2',
  pages: '331–340',
  doi: '10.1093/ajcn/77.2.331',
  fromMemory: ['doi'],
};

const POPULATION: Population = {
  description: '1829 people of five centres (1474 white, 355 black)',
  ancestry: 'white and black',
  n: 1829,
  ageYears: [12, 94],
};

/** Fat-free mass in kg from H²/R, weight and R, a form for each sex: the set of three decimals. */
export const FFM_SUN_2003: Equation = {
  id: 'ffm-sun-2003',
  name: 'Sun 2003 (three decimals)',
  quantity: 'ffm',
  unit: 'kg',
  version: 1,
  branches: [
    {
      sex: 'M',
      intercept: -10.678,
      terms: [
        { coefficient: 0.652, regressor: 'height2_per_resistance' },
        { coefficient: 0.262, regressor: 'weight' },
        { coefficient: 0.015, regressor: 'resistance' },
      ],
    },
    {
      sex: 'F',
      intercept: -9.529,
      terms: [
        { coefficient: 0.696, regressor: 'height2_per_resistance' },
        { coefficient: 0.168, regressor: 'weight' },
        { coefficient: 0.016, regressor: 'resistance' },
      ],
    },
  ],
  sexCoding: { M: 1, F: 0 },
  population: POPULATION,
  posture: 'lying',
  electrodePath: 'hand-to-foot',
  frequencyKhz: 50,
  referenceMethod: 'four-compartment model',
  fit: { words: 'R² 0.90, RMSE 3.9 kg (men); R² 0.83, RMSE 2.9 kg (women)' },
  citation: CITATION,
  verification: 'from-memory',
  verificationNote:
    'From memory: check against the paper before use. Population, fit and bias were read in the abstract; the coefficients are remembered.',
  cautions: [
    'By group: fat-free mass too low in black men by 2.1 kg and women by 1.6 kg, too high in white men by 0.4 kg and women by 0.3 kg (the abstract).',
    'Two sets of coefficients circulate, of three and of two decimals; their terms of R move fat-free mass by about 2.1 kg.',
    'The abstract says that fat-free mass uses the same predictors as total body water, H²/R and weight; both circulating sets add a term of R.',
    SPREAD_BETWEEN_EQUATIONS,
  ],
};

/** Fat-free mass in kg from H²/R, weight and R, a form for each sex: the set of two decimals. */
export const FFM_SUN_2003_TWO_DECIMALS: Equation = {
  id: 'ffm-sun-2003-two-decimals',
  name: 'Sun 2003 (two decimals)',
  quantity: 'ffm',
  unit: 'kg',
  version: 1,
  branches: [
    {
      sex: 'M',
      intercept: -10.68,
      terms: [
        { coefficient: 0.65, regressor: 'height2_per_resistance' },
        { coefficient: 0.26, regressor: 'weight' },
        { coefficient: 0.02, regressor: 'resistance' },
      ],
    },
    {
      sex: 'F',
      intercept: -9.53,
      terms: [
        { coefficient: 0.69, regressor: 'height2_per_resistance' },
        { coefficient: 0.17, regressor: 'weight' },
        { coefficient: 0.02, regressor: 'resistance' },
      ],
    },
  ],
  sexCoding: { M: 1, F: 0 },
  population: POPULATION,
  posture: 'lying',
  electrodePath: 'hand-to-foot',
  frequencyKhz: 50,
  referenceMethod: 'four-compartment model',
  fit: { words: 'R² 0.90, RMSE 3.9 kg (men); R² 0.83, RMSE 2.9 kg (women)' },
  citation: CITATION,
  verification: 'from-memory',
  verificationNote:
    'From memory: check against the paper before use. Population, fit and bias were read in the abstract; the coefficients are remembered.',
  cautions: [
    'By group: fat-free mass too low in black men by 2.1 kg and women by 1.6 kg, too high in white men by 0.4 kg and women by 0.3 kg (the abstract).',
    'Two sets of coefficients circulate, of three and of two decimals; their terms of R move fat-free mass by about 2.1 kg.',
    'The abstract says that fat-free mass uses the same predictors as total body water, H²/R and weight; both circulating sets add a term of R.',
    SPREAD_BETWEEN_EQUATIONS,
  ],
};

/** Total body water in L from H²/R and weight, a form for each sex: the set of three decimals. */
export const TBW_SUN_2003: Equation = {
  id: 'tbw-sun-2003',
  name: 'Sun 2003 (three decimals)',
  quantity: 'tbw',
  unit: 'L',
  version: 1,
  branches: [
    {
      sex: 'M',
      intercept: 1.203,
      terms: [
        { coefficient: 0.449, regressor: 'height2_per_resistance' },
        { coefficient: 0.176, regressor: 'weight' },
      ],
    },
    {
      sex: 'F',
      intercept: 3.747,
      terms: [
        { coefficient: 0.45, regressor: 'height2_per_resistance' },
        { coefficient: 0.113, regressor: 'weight' },
      ],
    },
  ],
  sexCoding: { M: 1, F: 0 },
  population: POPULATION,
  posture: 'lying',
  electrodePath: 'hand-to-foot',
  frequencyKhz: 50,
  referenceMethod: 'not stated',
  fit: { words: 'R² 0.84, RMSE 3.8 L (men); R² 0.79, RMSE 2.6 L (women)' },
  citation: CITATION,
  verification: 'from-memory',
  verificationNote:
    'From memory: check against the paper before use. Predictors, population, fit and bias were read in the abstract; the coefficients are remembered.',
  cautions: [
    'By group: total body water too low in black men by 2.0 L and women by 1.4 L, too high in white men by 0.5 L and women by 0.3 L (the abstract).',
  ],
};

/** Total body water in L from H²/R and weight, a form for each sex: the set of two decimals. */
export const TBW_SUN_2003_TWO_DECIMALS: Equation = {
  id: 'tbw-sun-2003-two-decimals',
  name: 'Sun 2003 (two decimals)',
  quantity: 'tbw',
  unit: 'L',
  version: 1,
  branches: [
    {
      sex: 'M',
      intercept: 1.2,
      terms: [
        { coefficient: 0.45, regressor: 'height2_per_resistance' },
        { coefficient: 0.18, regressor: 'weight' },
      ],
    },
    {
      sex: 'F',
      intercept: 3.75,
      terms: [
        { coefficient: 0.45, regressor: 'height2_per_resistance' },
        { coefficient: 0.11, regressor: 'weight' },
      ],
    },
  ],
  sexCoding: { M: 1, F: 0 },
  population: POPULATION,
  posture: 'lying',
  electrodePath: 'hand-to-foot',
  frequencyKhz: 50,
  referenceMethod: 'not stated',
  fit: { words: 'R² 0.84, RMSE 3.8 L (men); R² 0.79, RMSE 2.6 L (women)' },
  citation: CITATION,
  verification: 'from-memory',
  verificationNote:
    'From memory: check against the paper before use. Predictors, population, fit and bias were read in the abstract; the coefficients are remembered.',
  cautions: [
    'By group: total body water too low in black men by 2.0 L and women by 1.4 L, too high in white men by 0.5 L and women by 0.3 L (the abstract).',
  ],
};
