import type { Equation } from '../equation';
import { ENERGY_FROM_COMPOSITION } from './shared-cautions';

/** Resting energy expenditure in kJ/d from fat-free and fat mass. */
export const REE_NELSON_1992: Equation = {
  id: 'ree-nelson-1992',
  name: 'Nelson 1992',
  quantity: 'ree',
  unit: 'kJ/d',
  version: 1,
  branches: [
    {
      intercept: 1114,
      terms: [
        { coefficient: 90.4, regressor: 'ffm' },
        { coefficient: 13.2, regressor: 'fm' },
      ],
    },
  ],
  sexCoding: { M: 1, F: 0 },
  population: { description: 'not stated where the equation was read' },
  posture: null,
  electrodePath: null,
  frequencyKhz: null,
  referenceMethod: 'not stated',
  fit: { r2: 0.743 },
  citation: { id: 'nelson-1992', authors: ['Nelson KM'], andOthers: true, year: 1992, fromMemory: ['authors'] },
  verification: 'read-in-secondary-text',
  verificationNote: 'Equation and R² were read in a later text; whom it was made for was not given there.',
  cautions: [ENERGY_FROM_COMPOSITION],
};
