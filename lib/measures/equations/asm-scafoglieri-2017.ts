import type { Equation } from '../equation';
import { ASM_NEEDS_LOCAL_CHECK } from './shared-cautions';

/** Appendicular lean mass in kg of older adults; women are coded 1. */
export const ASM_SCAFOGLIERI_2017: Equation = {
  id: 'asm-scafoglieri-2017',
  name: 'Scafoglieri 2017',
  quantity: 'asm',
  unit: 'kg',
  version: 1,
  branches: [
    {
      intercept: 1.821,
      terms: [
        { coefficient: 0.168, regressor: 'height2_per_resistance' },
        { coefficient: 0.132, regressor: 'weight' },
        { coefficient: 0.017, regressor: 'reactance' },
        { coefficient: -1.931, regressor: 'sex' },
      ],
    },
  ],
  sexCoding: { M: 0, F: 1 },
  population: {
    description: 'adults from 65 years with functional decline',
    n: 291,
    ageFrom: 65,
    fromMemory: ['n', 'ageFrom'],
  },
  posture: 'lying',
  electrodePath: 'hand-to-foot',
  frequencyKhz: 50,
  referenceMethod: 'not stated',
  fit: {},
  citation: {
    id: 'scafoglieri-2017',
    authors: ['Scafoglieri A'],
    andOthers: true,
    journal: 'Clin Nutr',
    year: 2017,
    volume: '36',
    pages: '869–875',
    fromMemory: ['authors'],
  },
  verification: 'from-memory',
  verificationNote:
    'From memory: check against the paper before use. Coefficients, sex coding and population are remembered.',
  cautions: ['Women are coded 1 and men 0, the reverse of most equations (from memory).', ASM_NEEDS_LOCAL_CHECK],
};
