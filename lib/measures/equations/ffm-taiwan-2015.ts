import type { Equation } from '../equation';

/** Fat-free mass in kg from the impedance between the feet, standing. */
export const FFM_TAIWAN_2015: Equation = {
  id: 'ffm-taiwan-2015',
  name: 'Taiwan 2015 (foot-to-foot)',
  quantity: 'ffm',
  unit: 'kg',
  version: 1,
  branches: [
    {
      intercept: 13.055,
      terms: [
        { coefficient: 0.204, regressor: 'weight' },
        { coefficient: 0.394, regressor: 'height2_per_impedance' },
        { coefficient: -0.136, regressor: 'age' },
        { coefficient: 8.125, regressor: 'sex' },
      ],
    },
  ],
  sexCoding: { M: 1, F: 0 },
  population: {
    description: '554 healthy Taiwanese people',
    ancestry: 'Taiwanese',
    n: 554,
    ageYears: [16, 75],
    bmi: [15.8, 43.1],
  },
  posture: 'standing',
  electrodePath: 'foot-to-foot',
  frequencyKhz: 50,
  referenceMethod: 'DXA',
  fit: { r2: 0.92, see: 3.17 },
  citation: {
    id: 'taiwan-2015',
    authors: [],
    journal: 'Nutr J',
    year: 2015,
    doi: '10.1186/s12937-015-0041-0',
    url: 'https://pmc.ncbi.nlm.nih.gov/articles/PMC4489024/',
  },
  verification: 'read-in-abstract',
  verificationNote:
    'Equation, sex coding, population and fit were read in the abstract; the authors’ names were not read, and the frequency was not stated there: 50 kHz is assumed.',
  cautions: [
    'Only for the path from foot to foot, standing: a hand-to-foot resistance does not fit it.',
    'Bias by body fat: women −2.6 kg at 20–30 % fat, +2.0 kg above 40 %; men −2.3 kg at 10–20 % fat, +2.1 kg above 30 % (the abstract).',
  ],
};
