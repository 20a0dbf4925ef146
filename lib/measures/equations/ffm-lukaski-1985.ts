import type { Equation } from '../equation';
import { SPREAD_BETWEEN_EQUATIONS } from './shared-cautions';

/** Fat-free mass in kg from H²/Z alone. */
export const FFM_LUKASKI_1985: Equation = {
  id: 'ffm-lukaski-1985',
  name: 'Lukaski 1985',
  quantity: 'ffm',
  unit: 'kg',
  version: 1,
  branches: [{ intercept: 3.04, terms: [{ coefficient: 0.85, regressor: 'height2_per_impedance' }] }],
  sexCoding: { M: 1, F: 0 },
  population: { description: 'not stated where the equation was read' },
  posture: 'lying',
  electrodePath: 'hand-to-foot',
  frequencyKhz: 50,
  referenceMethod: 'not stated',
  fit: {},
  citation: { id: 'lukaski-1985', authors: ['Lukaski HC'], andOthers: true, year: 1985, fromMemory: ['authors'] },
  verification: 'read-in-secondary-text',
  verificationNote: 'Read in a table of a later journal article; whom it was made for was not read there.',
  cautions: [
    'The group it was made for is unknown here, so no reading can be marked as outside it.',
    SPREAD_BETWEEN_EQUATIONS,
  ],
};
