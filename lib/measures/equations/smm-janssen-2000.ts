import type { Equation } from '../equation';

/** Skeletal muscle mass in kg from H²/R, sex and age. */
export const SMM_JANSSEN_2000: Equation = {
  id: 'smm-janssen-2000',
  name: 'Janssen 2000',
  quantity: 'smm',
  unit: 'kg',
  version: 1,
  branches: [
    {
      intercept: 5.102,
      terms: [
        { coefficient: 0.401, regressor: 'height2_per_resistance' },
        { coefficient: 3.825, regressor: 'sex' },
        { coefficient: -0.071, regressor: 'age' },
      ],
    },
  ],
  sexCoding: { M: 1, F: 0 },
  population: {
    description: '388 adults',
    n: 388,
    ageYears: [18, 86],
    fromMemory: ['n', 'ageYears'],
  },
  posture: 'lying',
  electrodePath: 'hand-to-foot',
  frequencyKhz: 50,
  referenceMethod: 'MRI',
  fit: { r2: 0.86, see: 2.7 },
  citation: {
    id: 'janssen-2000',
    authors: ['Janssen I', 'Heymsfield SB', 'Baumgartner RN', 'Ross R'],
    journal: 'J Appl Physiol',
    year: 2000,
    volume: '89',
    pages: '465–471',
  },
  verification: 'read-in-abstract',
  verificationNote:
    'Equation and fit were read on the paper’s first page and in two method descriptions; n and ages are from memory.',
  cautions: ['Underestimates in Asian groups (the paper’s first page).'],
};
