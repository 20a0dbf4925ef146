import type { Equation } from '../equation';

/** Fat-free mass in kg of adolescents with obesity, from H²/Z and weight. */
export const FFM_HOFSTEENGE_2015: Equation = {
  id: 'ffm-hofsteenge-2015',
  name: 'Hofsteenge 2015',
  quantity: 'ffm',
  unit: 'kg',
  version: 1,
  branches: [
    {
      intercept: -1.862,
      terms: [
        { coefficient: 0.527, regressor: 'height2_per_impedance' },
        { coefficient: 0.306, regressor: 'weight' },
      ],
    },
  ],
  sexCoding: { M: 1, F: 0 },
  population: { description: '103 adolescents with obesity', n: 103, ageYears: [11, 18] },
  posture: 'lying',
  electrodePath: 'hand-to-foot',
  frequencyKhz: 50,
  referenceMethod: 'DXA',
  fit: { r2: 0.92, see: 2.85, words: '76 % within 5 % of DXA' },
  citation: {
    id: 'hofsteenge-2015',
    authors: ['Hofsteenge GH', 'Chinapaw MJM', 'Weijs PJM'],
    journal: 'BMC Pediatr',
    year: 2015,
    doi: '10.1186/s12887-015-0476-7',
  },
  verification: 'read-in-abstract',
  verificationNote:
    'Equation, population and fit were read in the abstract; posture, path and frequency were not stated there.',
  cautions: [
    'Thirteen earlier equations were within 5 % of DXA in 0–68 % of these adolescents, with a bias from −29 to +36 % (the abstract).',
  ],
};
