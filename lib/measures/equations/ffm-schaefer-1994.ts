import type { Equation } from '../equation';

/** Fat-free mass in kg of children and adolescents, from H²/R and age. */
export const FFM_SCHAEFER_1994: Equation = {
  id: 'ffm-schaefer-1994',
  name: 'Schaefer 1994',
  quantity: 'ffm',
  unit: 'kg',
  version: 1,
  branches: [
    {
      intercept: 0.15,
      terms: [
        { coefficient: 0.65, regressor: 'height2_per_resistance' },
        { coefficient: 0.68, regressor: 'age' },
      ],
    },
  ],
  sexCoding: { M: 1, F: 0 },
  population: { description: 'children and adolescents', n: 112, ageYears: [4, 19], fromMemory: ['n', 'ageYears'] },
  posture: 'lying',
  electrodePath: 'hand-to-foot',
  frequencyKhz: 50,
  referenceMethod: 'not stated',
  fit: {},
  citation: {
    id: 'schaefer-1994',
    authors: ['Schaefer F'],
    andOthers: true,
    year: 1994,
    fromMemory: ['authors', 'year'],
  },
  verification: 'from-memory',
  verificationNote: 'From memory: check against the paper before use. Nothing of it was read.',
  cautions: [],
};
