import type { Equation } from '../equation';
import { SPREAD_BETWEEN_EQUATIONS } from './shared-cautions';

/** Fat-free mass in kg from H²/R, weight and reactance. */
export const FFM_LUKASKI_1986: Equation = {
  id: 'ffm-lukaski-1986',
  name: 'Lukaski 1986',
  quantity: 'ffm',
  unit: 'kg',
  version: 1,
  branches: [
    {
      intercept: -5.463,
      terms: [
        { coefficient: 0.756, regressor: 'height2_per_resistance' },
        { coefficient: 0.11, regressor: 'weight' },
        { coefficient: 0.107, regressor: 'reactance' },
      ],
    },
  ],
  sexCoding: { M: 1, F: 0 },
  population: { description: 'healthy adults', n: 151, ageYears: [18, 50], fromMemory: ['n', 'ageYears'] },
  posture: 'lying',
  electrodePath: 'hand-to-foot',
  frequencyKhz: 50,
  referenceMethod: 'not stated',
  fit: { r2: 0.98, see: 2.1, fromMemory: true },
  citation: {
    id: 'lukaski-1986',
    authors: ['Lukaski HC', 'Bolonchuk WW', 'Hall CB', 'Siders WA'],
    journal: 'J Appl Physiol',
    year: 1986,
    volume: '60',
    issue: '4',
    pages: '1327–1332',
  },
  verification: 'from-memory',
  verificationNote: 'From memory: check against the paper before use. Only the citation was read, on the first page.',
  cautions: [SPREAD_BETWEEN_EQUATIONS],
};
