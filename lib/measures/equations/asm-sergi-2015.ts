import type { Equation } from '../equation';
import { ASM_NEEDS_LOCAL_CHECK } from './shared-cautions';

/** Appendicular skeletal muscle mass in kg of older adults, from H²/R, weight, sex and reactance. */
export const ASM_SERGI_2015: Equation = {
  id: 'asm-sergi-2015',
  name: 'Sergi 2015',
  quantity: 'asm',
  unit: 'kg',
  version: 1,
  branches: [
    {
      intercept: -3.964,
      terms: [
        { coefficient: 0.227, regressor: 'height2_per_resistance' },
        { coefficient: 0.095, regressor: 'weight' },
        { coefficient: 1.384, regressor: 'sex' },
        { coefficient: 0.064, regressor: 'reactance' },
      ],
    },
  ],
  sexCoding: { M: 1, F: 0 },
  population: { description: 'Italian adults over 60 years', n: 296, ageFrom: 60, fromMemory: ['n', 'ageFrom'] },
  posture: 'lying',
  electrodePath: 'hand-to-foot',
  frequencyKhz: 50,
  referenceMethod: 'not stated',
  fit: { r2: 0.92, see: 1.14, fromMemory: true },
  citation: {
    id: 'sergi-2015',
    authors: ['Sergi G', 'De Rui M', 'Veronese N'],
    andOthers: true,
    journal: 'Clin Nutr',
    year: 2015,
    volume: '34',
    pages: '667–673',
  },
  verification: 'from-memory',
  verificationNote: 'From memory: check against the paper before use. Coefficients, population and fit are remembered.',
  cautions: [ASM_NEEDS_LOCAL_CHECK],
};
