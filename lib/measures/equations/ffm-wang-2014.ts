import type { Equation } from '../equation';

/** Fat-free mass in kg of Chinese children and adolescents, from H²/Z and weight. */
export const FFM_WANG_2014: Equation = {
  id: 'ffm-wang-2014',
  name: 'Wang 2014',
  quantity: 'ffm',
  unit: 'kg',
  version: 1,
  branches: [
    {
      intercept: 1.613,
      terms: [
        { coefficient: 0.742, regressor: 'height2_per_impedance' },
        { coefficient: 0.151, regressor: 'weight' },
      ],
    },
  ],
  sexCoding: { M: 1, F: 0 },
  population: {
    ancestry: 'Chinese',
    description: '255 healthy Chinese children and adolescents (127 boys, 128 girls)',
    n: 255,
    ageYears: [9, 19],
  },
  posture: 'lying',
  electrodePath: 'hand-to-foot',
  frequencyKhz: 50,
  referenceMethod: 'DXA',
  fit: { r2: 0.95, see: 2.45 },
  citation: {
    id: 'wang-2014',
    authors: ['Wang L', 'Hui SS', 'Wong SH'],
    journal: 'Med Sci Monit',
    year: 2014,
    volume: '20',
    pages: '2298–2310',
    doi: '10.12659/MSM.890696',
  },
  verification: 'read-in-abstract',
  verificationNote:
    'Equation, electrode path, frequency, population and fit were read in the abstract; the posture was not stated there.',
  cautions: ['None of 24 earlier equations was statistically equivalent to DXA in these children (the abstract).'],
};
