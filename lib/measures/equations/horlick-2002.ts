import type { Citation } from '../citation';
import type { Equation, Population } from '../equation';

const CITATION: Citation = {
  id: 'horlick-2002',
  authors: ['Horlick M', 'Arpadi SM', 'Bethel J'],
  andOthers: true,
  journal: 'Am J Clin Nutr',
  year: 2002,
  volume: '76',
  pages: '991–999',
};

const POPULATION: Population = {
  description: 'children and adolescents, healthy and with HIV',
  n: 1291,
  ageYears: [4, 18],
  fromMemory: ['n', 'ageYears'],
};

/** Fat-free mass in kg of children: an estimate of water divided by a hydration that falls with age. */
export const FFM_HORLICK_2002: Equation = {
  id: 'ffm-horlick-2002',
  name: 'Horlick 2002',
  quantity: 'ffm',
  unit: 'kg',
  version: 1,
  branches: [
    {
      intercept: 3.474,
      terms: [
        { coefficient: 0.459, regressor: 'height2_per_resistance' },
        { coefficient: 0.064, regressor: 'weight' },
      ],
      dividedBy: {
        intercept: 0.769,
        terms: [
          { coefficient: -0.009, regressor: 'age' },
          { coefficient: -0.016, regressor: 'sex' },
        ],
      },
    },
  ],
  sexCoding: { M: 1, F: 0 },
  population: POPULATION,
  posture: 'lying',
  electrodePath: 'hand-to-foot',
  frequencyKhz: 50,
  referenceMethod: 'not stated',
  fit: {},
  citation: CITATION,
  verification: 'from-memory',
  verificationNote: 'From memory: check against the paper before use. Coefficients and population are remembered.',
  cautions: [
    'The divisor falls with age and reaches zero at 85 years: outside childhood the result is meaningless (form of the equation).',
  ],
};

/** Total body water in L of children, from H²/R and weight. */
export const TBW_HORLICK_2002: Equation = {
  id: 'tbw-horlick-2002',
  name: 'Horlick 2002',
  quantity: 'tbw',
  unit: 'L',
  version: 1,
  branches: [
    {
      intercept: 0.725,
      terms: [
        { coefficient: 0.475, regressor: 'height2_per_resistance' },
        { coefficient: 0.14, regressor: 'weight' },
      ],
    },
  ],
  sexCoding: { M: 1, F: 0 },
  population: POPULATION,
  posture: 'lying',
  electrodePath: 'hand-to-foot',
  frequencyKhz: 50,
  referenceMethod: 'not stated',
  fit: {},
  citation: CITATION,
  verification: 'from-memory',
  verificationNote: 'From memory: check against the paper before use. Coefficients and population are remembered.',
  cautions: [],
};
