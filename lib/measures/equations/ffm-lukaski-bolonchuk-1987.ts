import type { Equation } from '../equation';
import { SPREAD_BETWEEN_EQUATIONS } from './shared-cautions';

/** Fat-free mass in kg from H²/R, weight, reactance and sex. */
export const FFM_LUKASKI_BOLONCHUK_1987: Equation = {
  id: 'ffm-lukaski-bolonchuk-1987',
  name: 'Lukaski & Bolonchuk 1987',
  quantity: 'ffm',
  unit: 'kg',
  version: 1,
  branches: [
    {
      intercept: -4.03,
      terms: [
        { coefficient: 0.734, regressor: 'height2_per_resistance' },
        { coefficient: 0.116, regressor: 'weight' },
        { coefficient: 0.096, regressor: 'reactance' },
        { coefficient: 0.984, regressor: 'sex' },
      ],
    },
  ],
  sexCoding: { M: 1, F: 0 },
  population: { description: 'not remembered', n: 114, fromMemory: ['n'] },
  posture: 'lying',
  electrodePath: 'hand-to-foot',
  frequencyKhz: 50,
  referenceMethod: 'not stated',
  fit: {},
  citation: { id: 'lukaski-bolonchuk-1987', authors: ['Lukaski HC', 'Bolonchuk WW'], year: 1987, fromMemory: ['year'] },
  verification: 'from-memory',
  verificationNote: 'From memory: check against the paper before use. Nothing of it was read.',
  cautions: [SPREAD_BETWEEN_EQUATIONS],
};
