import type { Equation } from '../equation';
import { SPREAD_BETWEEN_EQUATIONS } from './shared-cautions';

/** Fat-free mass in kg of older adults, from H²/R, weight and reactance, a form for each sex. */
export const FFM_ROUBENOFF_1997: Equation = {
  id: 'ffm-roubenoff-1997',
  name: 'Roubenoff 1997',
  quantity: 'ffm',
  unit: 'kg',
  version: 1,
  branches: [
    {
      sex: 'M',
      intercept: 9.1536,
      terms: [
        { coefficient: 0.4273, regressor: 'height2_per_resistance' },
        { coefficient: 0.1926, regressor: 'weight' },
        { coefficient: 0.0667, regressor: 'reactance' },
      ],
    },
    {
      sex: 'F',
      intercept: 7.7435,
      terms: [
        { coefficient: 0.4542, regressor: 'height2_per_resistance' },
        { coefficient: 0.119, regressor: 'weight' },
        { coefficient: 0.0455, regressor: 'reactance' },
      ],
    },
  ],
  sexCoding: { M: 1, F: 0 },
  population: { description: 'older adults of Framingham', n: 294, fromMemory: ['n'] },
  posture: 'lying',
  electrodePath: 'hand-to-foot',
  frequencyKhz: 50,
  referenceMethod: 'not stated',
  fit: { words: 'SEE 3.4 kg (men), 2.1 kg (women)', fromMemory: true },
  citation: {
    id: 'roubenoff-1997',
    authors: ['Roubenoff R', 'Baumgartner RN', 'Harris TB'],
    andOthers: true,
    journal: 'J Gerontol A',
    year: 1997,
    volume: '52',
    pages: 'M129–M136',
  },
  verification: 'from-memory',
  verificationNote:
    'From memory: check against the paper before use. Coefficients, population and fit are remembered; the ages are not known.',
  cautions: [SPREAD_BETWEEN_EQUATIONS],
};
