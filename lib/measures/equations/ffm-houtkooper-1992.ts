import type { Equation } from '../equation';

/** Fat-free mass in kg of children and adolescents, from H²/R and weight. */
export const FFM_HOUTKOOPER_1992: Equation = {
  id: 'ffm-houtkooper-1992',
  name: 'Houtkooper 1992',
  quantity: 'ffm',
  unit: 'kg',
  version: 1,
  branches: [
    {
      intercept: 1.31,
      terms: [
        { coefficient: 0.61, regressor: 'height2_per_resistance' },
        { coefficient: 0.25, regressor: 'weight' },
      ],
    },
  ],
  sexCoding: { M: 1, F: 0 },
  population: {
    description: 'children and adolescents, 94 for the equation and 225 in all',
    n: 225,
    ageYears: [10, 19],
    fromMemory: ['n', 'ageYears'],
  },
  posture: 'lying',
  electrodePath: 'hand-to-foot',
  frequencyKhz: 50,
  referenceMethod: 'not stated',
  fit: { see: 2.1, fromMemory: true },
  citation: {
    id: 'houtkooper-1992',
    authors: ['Houtkooper LB', 'Going SB', 'Lohman TG', 'Roche AF', 'Van Loan M'],
    journal: 'J Appl Physiol',
    year: 1992,
    volume: '72',
    pages: '366–373',
  },
  verification: 'from-memory',
  verificationNote: 'From memory: check against the paper before use. Coefficients, population and fit are remembered.',
  cautions: [],
};
