import type { CutOff } from './cut-off';
import { below, ladder } from './ladder';

/** Waist-to-height ratio, all family backgrounds. */
export const WAIST_HEIGHT_NICE: CutOff = {
  id: 'waist-height-nice-2022',
  version: 1,
  name: 'NICE 2022, waist-to-height',
  quantity: 'waist_height',
  methods: ['tape'],
  group: null,
  branches: [
    {
      ageFrom: 2,
      intervals: ladder(
        [
          below(0.4, { id: 'below-0.4', words: 'Below the ranges that NICE describes (0.4).' }),
          below(0.5, {
            id: 'no-increased',
            words: 'In the range that NICE links to no increased health risk (0.4 to below 0.5).',
          }),
          below(0.6, {
            id: 'increased',
            words: 'In the range that NICE links to increased health risk (0.5 to below 0.6).',
          }),
        ],
        {
          id: 'further-increased',
          words: 'In the range that NICE links to further increased health risk (0.6 and above).',
        },
      ),
    },
  ],
  limits: { bmiBelow: 35, notInPregnancy: true },
  boundRule:
    'Printed as 0.4–0.49 and 0.5–0.59, which leaves gaps: 0.495 belongs to the lower range, 0.595 to the middle one.',
  citation: {
    id: 'nice-2022',
    authors: ['National Institute for Health and Care Excellence'],
    publisher: 'NICE',
    year: 2022,
  },
  verification: 'read-in-secondary-text',
  verificationNote: 'Read in several reports about the guideline of 2022, not in the guideline.',
  cautions: [
    'For a BMI below 35 kg/m² only; not in pregnancy and not under 2 years.',
    'Waist midway between the lowest rib and the hip bone, after breathing out normally.',
  ],
};
