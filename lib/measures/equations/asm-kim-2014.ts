import type { Equation } from '../equation';
import { ASM_NEEDS_LOCAL_CHECK } from './shared-cautions';

/** Appendicular skeletal muscle mass in kg of older Korean adults, from H²/R at 250 kHz. */
export const ASM_KIM_2014: Equation = {
  id: 'asm-kim-2014',
  name: 'Kim 2014',
  quantity: 'asm',
  unit: 'kg',
  version: 1,
  branches: [
    {
      intercept: 5.663,
      terms: [
        { coefficient: 0.104, regressor: 'height2_per_resistance' },
        { coefficient: -0.05, regressor: 'age' },
        { coefficient: 2.954, regressor: 'sex' },
        { coefficient: 0.055, regressor: 'weight' },
      ],
    },
  ],
  sexCoding: { M: 1, F: 0 },
  population: {
    ancestry: 'Korean',
    description: '720 older Korean adults (285 men, 435 women), checked in 410 others',
    n: 720,
    ageYears: [65, 80],
  },
  posture: 'lying',
  electrodePath: 'hand-to-foot',
  frequencyKhz: 250,
  referenceMethod: 'DXA',
  fit: { r2: 0.89 },
  citation: {
    id: 'kim-2014',
    authors: ['Kim'],
    andOthers: true,
    journal: 'Arch Gerontol Geriatr',
    year: 2014,
    volume: '58',
    pages: '303–307',
    doi: '10.1016/j.archger.2013.11.002',
    fromMemory: ['authors'],
  },
  verification: 'read-in-abstract',
  verificationNote:
    'Equation, sex coding, population and R² were read in the abstract, which prints the resistance as “in 250 Ω”, read here as at 250 kHz; posture and path were not stated.',
  cautions: [
    'Needs the resistance at 250 kHz: that of 50 kHz is higher and does not fit (the abstract names 250).',
    ASM_NEEDS_LOCAL_CHECK,
  ],
};
