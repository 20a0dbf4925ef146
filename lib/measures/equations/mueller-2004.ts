import type { Citation } from '../citation';
import type { Equation, Population } from '../equation';
import { ENERGY_FROM_COMPOSITION } from './shared-cautions';

const CITATION: Citation = {
  id: 'mueller-2004',
  authors: ['Müller MJ'],
  andOthers: true,
  journal: 'Am J Clin Nutr',
  year: 2004,
  volume: '80',
  pages: '1379–1390',
  fromMemory: ['authors'],
};

const POPULATION: Population = { description: '2528 people of seven German centres', n: 2528, ageYears: [5, 91] };

/** Resting energy expenditure in MJ/d from weight, sex and age. */
export const REE_MUELLER_2004: Equation = {
  id: 'ree-mueller-2004',
  name: 'Müller 2004 (weight)',
  quantity: 'ree',
  unit: 'MJ/d',
  version: 1,
  branches: [
    {
      intercept: 3.21,
      terms: [
        { coefficient: 0.047, regressor: 'weight' },
        { coefficient: 1.009, regressor: 'sex' },
        { coefficient: -0.01452, regressor: 'age' },
      ],
    },
  ],
  sexCoding: { M: 1, F: 0 },
  population: POPULATION,
  posture: null,
  electrodePath: null,
  frequencyKhz: null,
  referenceMethod: 'not stated',
  fit: {},
  citation: CITATION,
  verification: 'read-in-secondary-text',
  verificationNote: 'Equation, n and ages were read in later texts, which disagree on the constant.',
  cautions: [
    'The constant is printed as 3.21 and as 3.31 MJ/d in different texts: a difference of 24 kcal/d. 3.21 is used here.',
  ],
};

/** Resting energy expenditure in MJ/d from fat-free mass, fat mass, sex and age. */
export const REE_MUELLER_2004_COMPOSITION: Equation = {
  id: 'ree-mueller-2004-composition',
  name: 'Müller 2004 (FFM, FM)',
  quantity: 'ree',
  unit: 'MJ/d',
  version: 1,
  branches: [
    {
      intercept: 2.992,
      terms: [
        { coefficient: 0.05192, regressor: 'ffm' },
        { coefficient: 0.04036, regressor: 'fm' },
        { coefficient: 0.869, regressor: 'sex' },
        { coefficient: -0.01181, regressor: 'age' },
      ],
    },
  ],
  sexCoding: { M: 1, F: 0 },
  population: POPULATION,
  posture: null,
  electrodePath: null,
  frequencyKhz: null,
  referenceMethod: 'not stated',
  fit: {},
  citation: CITATION,
  verification: 'read-in-secondary-text',
  verificationNote: 'Equation, n and ages were read in later texts.',
  cautions: [ENERGY_FROM_COMPOSITION],
};
