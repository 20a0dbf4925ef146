import type { Equation } from '../equation';
import { ASM_NEEDS_LOCAL_CHECK } from './shared-cautions';

/** Appendicular skeletal muscle mass in kg of older adults, from H²/R, sex and weight. */
export const ASM_RANGEL_PENICHE_2015: Equation = {
  id: 'asm-rangel-peniche-2015',
  name: 'Rangel Peniche 2015',
  quantity: 'asm',
  unit: 'kg',
  version: 1,
  branches: [
    {
      intercept: -0.05376,
      terms: [
        { coefficient: 0.2394, regressor: 'height2_per_resistance' },
        { coefficient: 2.708, regressor: 'sex' },
        { coefficient: 0.065, regressor: 'weight' },
      ],
    },
  ],
  sexCoding: { M: 1, F: 0 },
  population: { description: 'adults from 60 years in north-western Mexico', ageFrom: 60, fromMemory: ['ageFrom'] },
  posture: 'lying',
  electrodePath: 'hand-to-foot',
  frequencyKhz: 50,
  referenceMethod: 'not stated',
  fit: {},
  citation: {
    id: 'rangel-peniche-2015',
    authors: ['Rangel Peniche DB'],
    andOthers: true,
    journal: 'Nutr Hosp',
    year: 2015,
    volume: '32',
    pages: '2400–2406',
    fromMemory: ['authors', 'journal', 'volume', 'pages'],
  },
  verification: 'from-memory',
  verificationNote:
    'From memory: check against the paper before use. Coefficients, population and citation are remembered.',
  cautions: [ASM_NEEDS_LOCAL_CHECK],
};
