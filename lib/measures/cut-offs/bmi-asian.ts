import type { CutOff } from './cut-off';
import { ADULTS, below, ladder } from './ladder';

const shared = { version: 1, quantity: 'bmi', methods: ['weighing'], limits: { notInPregnancy: true } } as const;

/** Additional points for action in public health, for Asian populations. */
export const BMI_ASIAN_ACTION_POINTS: CutOff = {
  ...shared,
  id: 'bmi-asian-action-points',
  name: 'WHO expert consultation 2004, BMI points for action',
  group: 'Asian populations',
  branches: [
    {
      ...ADULTS,
      intervals: ladder(
        [
          below(23, { id: 'below-23', words: 'Below the first additional point for action (23.0 kg/m²).' }),
          below(27.5, { id: 'from-23', words: 'At or above the additional point for action of 23.0 kg/m².' }),
          below(32.5, { id: 'from-27.5', words: 'At or above the additional point for action of 27.5 kg/m².' }),
          below(37.5, { id: 'from-32.5', words: 'At or above the additional point for action of 32.5 kg/m².' }),
        ],
        { id: 'from-37.5', words: 'At or above the additional point for action of 37.5 kg/m².' },
      ),
    },
  ],
  boundRule: 'The source gives points; a value at a point counts as having reached it.',
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
  verificationNote: 'The four points were read in the abstract.',
  cautions: [
    'The international limits stay beside them; observed risk begins at 22–25 kg/m² and high risk at 26–31 kg/m², differently between Asian populations (abstract).',
  ],
};

/** Lower BMI thresholds for some family backgrounds. */
export const BMI_NICE_LOWER: CutOff = {
  ...shared,
  id: 'bmi-nice-lower',
  name: 'NICE, lower BMI thresholds',
  group: 'South Asian, Chinese, other Asian, Middle Eastern, Black African or African-Caribbean family background',
  branches: [
    {
      ...ADULTS,
      intervals: ladder(
        [
          below(23, { id: 'below-23', words: 'Below the lower threshold of 23 kg/m².' }),
          below(27.5, {
            id: 'from-23',
            words: 'In the range that NICE names overweight for these backgrounds (23 to below 27.5 kg/m²).',
          }),
        ],
        {
          id: 'from-27.5',
          words: 'In the range that NICE names obesity for these backgrounds (27.5 kg/m² and above).',
        },
      ),
    },
  ],
  boundRule: 'A value at a threshold belongs to the range above it.',
  citation: {
    id: 'nice-2022',
    authors: ['National Institute for Health and Care Excellence'],
    publisher: 'NICE',
    year: 2022,
    fromMemory: ['year'],
  },
  verification: 'from-memory',
  verificationNote:
    'That lower thresholds hold for these backgrounds was read in reports about the guideline; the numbers are from memory.',
  cautions: ['A BMI does not tell fat from muscle or water.'],
};
