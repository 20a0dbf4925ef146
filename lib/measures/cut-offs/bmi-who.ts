import type { CutOff } from './cut-off';
import { ADULTS, below, ladder } from './ladder';

const shared = {
  version: 1,
  quantity: 'bmi',
  methods: ['weighing'],
  group: null,
  limits: { notInPregnancy: true },
} as const;

/** The international limit of 25 kg/m² alone. */
export const BMI_WHO_25: CutOff = {
  ...shared,
  id: 'bmi-who-25',
  name: 'WHO, BMI of 25',
  branches: [
    {
      ...ADULTS,
      intervals: ladder([below(25, { id: 'below-25', words: 'Below the international BMI limit of 25 kg/m².' })], {
        id: 'from-25',
        words: 'At or above the international BMI limit of 25 kg/m².',
      }),
    },
  ],
  boundRule: '25 belongs to the upper range.',
  citation: {
    id: 'who-expert-consultation-2004',
    authors: ['WHO Expert Consultation'],
    journal: 'Lancet',
    year: 2004,
    volume: '363',
    pages: '157–163',
    doi: '10.1016/S0140-6736(03)15268-3',
  },
  verification: 'read-in-abstract',
  verificationNote: 'That the international limits are kept was read in the abstract.',
  cautions: ['A BMI does not tell fat from muscle or water.'],
};

/** The classes of the World Health Organization for adults. */
export const BMI_WHO_CLASSES: CutOff = {
  ...shared,
  id: 'bmi-who-classes',
  name: 'WHO, BMI classes',
  branches: [
    {
      ...ADULTS,
      intervals: ladder(
        [
          below(18.5, { id: 'under', words: 'In the range that WHO names underweight (below 18.5 kg/m²).' }),
          below(25, { id: 'normal', words: 'In the range that WHO names normal (18.5 to below 25 kg/m²).' }),
          below(30, { id: 'over', words: 'In the range that WHO names overweight (25 to below 30 kg/m²).' }),
          below(35, { id: 'obese-1', words: 'In the range that WHO names obesity class I (30 to below 35 kg/m²).' }),
          below(40, { id: 'obese-2', words: 'In the range that WHO names obesity class II (35 to below 40 kg/m²).' }),
        ],
        { id: 'obese-3', words: 'In the range that WHO names obesity class III (40 kg/m² and above).' },
      ),
    },
  ],
  boundRule:
    'Printed as 18.5–24.9, 25–29.9 and so on: 24.95 belongs to the lower class, the next begins at its whole number.',
  citation: {
    id: 'who-894',
    authors: ['World Health Organization'],
    publisher: 'WHO Technical Report Series 894',
    year: 2000,
    fromMemory: ['year'],
  },
  verification: 'from-memory',
  verificationNote: 'All limits but 25 are from memory.',
  cautions: ['A BMI does not tell fat from muscle or water.'],
};
