import type { Equation } from '../equation';

/** Fat-free mass in kg of Japanese boys, from H²/Z and weight. */
export const FFM_JAPANESE_BOYS_1994: Equation = {
  id: 'ffm-japanese-boys-1994',
  name: 'Japanese boys 1994',
  quantity: 'ffm',
  unit: 'kg',
  version: 1,
  branches: [
    {
      intercept: 1.66,
      terms: [
        { coefficient: 0.56, regressor: 'height2_per_impedance' },
        { coefficient: 0.2, regressor: 'weight' },
      ],
    },
  ],
  sexCoding: { M: 1, F: 0 },
  population: { description: '141 Japanese boys', ancestry: 'Japanese', n: 141, ageYears: [9, 14], sex: 'M' },
  posture: 'lying',
  electrodePath: 'hand-to-foot',
  frequencyKhz: 50,
  referenceMethod: 'densitometry',
  fit: { r2: 0.971, see: 1.59, words: 'R² adjusted' },
  citation: {
    id: 'japanese-boys-1994',
    authors: [],
    year: 1994,
    url: 'https://pubmed.ncbi.nlm.nih.gov/7956989/',
    fromMemory: ['year'],
  },
  verification: 'read-in-abstract',
  verificationNote:
    'Equation, population, reference method and fit were read in the abstract; the authors’ names were not read, the year is from memory, and posture, path and frequency were not stated.',
  cautions: ['Made for boys of 9–14 years alone (the abstract).'],
};
