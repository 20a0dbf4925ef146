import type { Citation } from '../citation';
import type { Equation, Population } from '../equation';
import { ENERGY_FROM_COMPOSITION } from './shared-cautions';

const CITATION: Citation = {
  id: 'mifflin-1990',
  authors: ['Mifflin MD', 'St Jeor ST', 'Hill LA', 'Scott BJ', 'Daugherty SA', 'Koh YO'],
  journal: 'Am J Clin Nutr',
  year: 1990,
  volume: '51',
  pages: '241–247',
};

const POPULATION: Population = {
  description: '498 healthy adults (251 men, 247 women), 264 of normal weight and 234 with obesity',
  n: 498,
  ageYears: [19, 78],
};

/** Resting energy expenditure in kcal/d from weight, height, age and sex. */
export const REE_MIFFLIN_1990: Equation = {
  id: 'ree-mifflin-1990',
  name: 'Mifflin 1990',
  quantity: 'ree',
  unit: 'kcal/d',
  version: 1,
  branches: [
    {
      intercept: -161,
      terms: [
        { coefficient: 9.99, regressor: 'weight' },
        { coefficient: 6.25, regressor: 'height' },
        { coefficient: -4.92, regressor: 'age' },
        { coefficient: 166, regressor: 'sex' },
      ],
    },
  ],
  sexCoding: { M: 1, F: 0 },
  population: POPULATION,
  posture: null,
  electrodePath: null,
  frequencyKhz: null,
  referenceMethod: 'indirect calorimetry',
  fit: { r2: 0.71 },
  citation: CITATION,
  verification: 'read-in-abstract',
  verificationNote: 'Equation, sex coding, population and fit were read in the first page’s text, in four copies.',
  cautions: [
    'Within ± 10 % of measured expenditure in 79 % of 338 adults of 18–65 years and BMI 25–40, bias −1.0 %, root mean square error 136 kcal/d (a later text).',
  ],
};

/** Resting energy expenditure in kcal/d: the rounded form by sex. */
export const REE_MIFFLIN_1990_ROUNDED: Equation = {
  id: 'ree-mifflin-1990-rounded',
  name: 'Mifflin 1990 (rounded)',
  quantity: 'ree',
  unit: 'kcal/d',
  version: 1,
  branches: [
    {
      sex: 'M',
      intercept: 5,
      terms: [
        { coefficient: 10, regressor: 'weight' },
        { coefficient: 6.25, regressor: 'height' },
        { coefficient: -5, regressor: 'age' },
      ],
    },
    {
      sex: 'F',
      intercept: -161,
      terms: [
        { coefficient: 10, regressor: 'weight' },
        { coefficient: 6.25, regressor: 'height' },
        { coefficient: -5, regressor: 'age' },
      ],
    },
  ],
  sexCoding: { M: 1, F: 0 },
  population: POPULATION,
  posture: null,
  electrodePath: null,
  frequencyKhz: null,
  referenceMethod: 'indirect calorimetry',
  fit: { r2: 0.71 },
  citation: CITATION,
  verification: 'read-in-abstract',
  verificationNote: 'Both forms, population and fit were read in the first page’s text, in four copies.',
  cautions: [
    'Within ± 10 % of measured expenditure in 79 % of 338 adults of 18–65 years and BMI 25–40, bias −1.0 %, root mean square error 136 kcal/d (a later text).',
  ],
};

/** Resting energy expenditure in kcal/d from fat-free mass. */
export const REE_MIFFLIN_1990_FFM: Equation = {
  id: 'ree-mifflin-1990-ffm',
  name: 'Mifflin 1990 (fat-free mass)',
  quantity: 'ree',
  unit: 'kcal/d',
  version: 1,
  branches: [{ intercept: 413, terms: [{ coefficient: 19.7, regressor: 'ffm' }] }],
  sexCoding: { M: 1, F: 0 },
  population: POPULATION,
  posture: null,
  electrodePath: null,
  frequencyKhz: null,
  referenceMethod: 'indirect calorimetry',
  fit: { r2: 0.64 },
  citation: CITATION,
  verification: 'read-in-secondary-text',
  verificationNote: 'R² was read in the abstract, the coefficients in research notes.',
  cautions: [ENERGY_FROM_COMPOSITION],
};
