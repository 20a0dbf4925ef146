import type { Equation } from '../equation';
import { SPREAD_BETWEEN_EQUATIONS } from './shared-cautions';

/** Fat-free mass in kg of people from 16 years, from H²/R, height, weight, age and sex. */
export const FFM_DEURENBERG_1991: Equation = {
  id: 'ffm-deurenberg-1991',
  name: 'Deurenberg 1991',
  quantity: 'ffm',
  unit: 'kg',
  version: 1,
  branches: [
    {
      intercept: -12.44,
      terms: [
        { coefficient: 0.34, regressor: 'height2_per_resistance' },
        { coefficient: 0.1534, regressor: 'height' },
        { coefficient: 0.273, regressor: 'weight' },
        { coefficient: -0.127, regressor: 'age' },
        { coefficient: 4.56, regressor: 'sex' },
      ],
    },
  ],
  sexCoding: { M: 1, F: 0 },
  population: {
    description: '827 men, women and children of 7–83 years; this form from 16 years',
    n: 827,
    ageYears: [16, 83],
  },
  posture: 'lying',
  electrodePath: 'hand-to-foot',
  frequencyKhz: 50,
  referenceMethod: 'densitometry',
  fit: { r2: 0.93, see: 2.63, fromMemory: true },
  citation: {
    id: 'deurenberg-1991',
    authors: ['Deurenberg P', 'van der Kooy K', 'Leenen R', 'Weststrate JA', 'Seidell JC'],
    journal: 'Int J Obes',
    year: 1991,
    volume: '15',
    pages: '17–25',
  },
  verification: 'read-in-secondary-text',
  verificationNote:
    'The coefficients were read in a text that compares equations, n and ages in a copy of the abstract; the fit and that a man is coded 1 are from memory.',
  cautions: [
    'The paper multiplies the height in metres by 15.34; here the height in cm is multiplied by 0.1534 (arithmetic).',
    SPREAD_BETWEEN_EQUATIONS,
  ],
};
