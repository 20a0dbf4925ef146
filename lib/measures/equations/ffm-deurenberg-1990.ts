import type { Equation } from '../equation';
import { SPREAD_BETWEEN_EQUATIONS } from './shared-cautions';

/** Fat-free mass in kg of older adults, from H²/R and sex: the second equation of the paper. */
export const FFM_DEURENBERG_1990: Equation = {
  id: 'ffm-deurenberg-1990',
  name: 'Deurenberg 1990',
  quantity: 'ffm',
  unit: 'kg',
  version: 1,
  branches: [
    {
      intercept: 3.9,
      terms: [
        { coefficient: 0.671, regressor: 'height2_per_resistance' },
        { coefficient: 3.1, regressor: 'sex' },
      ],
    },
  ],
  sexCoding: { M: 1, F: 0 },
  population: { description: '72 older adults (35 men, 37 women)', n: 72, ageYears: [60, 83] },
  posture: 'lying',
  electrodePath: 'hand-to-foot',
  frequencyKhz: 50,
  referenceMethod: 'not stated',
  fit: {},
  citation: { id: 'deurenberg-1990', authors: ['Deurenberg P'], andOthers: true, year: 1990, fromMemory: ['year'] },
  verification: 'read-in-secondary-text',
  verificationNote:
    'Read on two pages of a compendium of medical equations; the year is from memory, the journal unknown.',
  cautions: [
    'The coefficient of H²/R was read as 0.671; tables of reviews, as remembered, give 0.672.',
    'The first equation of the paper needs the thigh circumference, which no column of an export holds: it stands among the formulas.',
    SPREAD_BETWEEN_EQUATIONS,
  ],
};
