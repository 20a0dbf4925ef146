import type { Equation } from '../equation';
import { SPREAD_BETWEEN_EQUATIONS } from './shared-cautions';

/** Fat-free mass in kg of older adults, from H²/R, weight and sex. */
export const FFM_DEY_2003: Equation = {
  id: 'ffm-dey-2003',
  name: 'Dey 2003',
  quantity: 'ffm',
  unit: 'kg',
  version: 1,
  branches: [
    {
      intercept: 11.78,
      terms: [
        { coefficient: 0.499, regressor: 'height2_per_resistance' },
        { coefficient: 0.134, regressor: 'weight' },
        { coefficient: 3.449, regressor: 'sex' },
      ],
    },
  ],
  sexCoding: { M: 1, F: 0 },
  population: { description: 'Swedish older adults', n: 106, ageYears: [70, 75], fromMemory: ['n', 'ageYears'] },
  posture: 'lying',
  electrodePath: 'hand-to-foot',
  frequencyKhz: 50,
  referenceMethod: 'not stated',
  fit: { words: 'SEE about 2.6–3.0 kg', fromMemory: true },
  citation: {
    id: 'dey-2003',
    authors: ['Dey DK', 'Bosaeus I', 'Lissner L', 'Steen B'],
    journal: 'Int J Obes',
    year: 2003,
    volume: '27',
    pages: '909–916',
  },
  verification: 'from-memory',
  verificationNote: 'From memory: check against the paper before use. Coefficients, population and fit are remembered.',
  cautions: [SPREAD_BETWEEN_EQUATIONS],
};
