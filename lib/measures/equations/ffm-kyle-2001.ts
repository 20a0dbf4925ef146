import type { Equation } from '../equation';
import { SPREAD_BETWEEN_EQUATIONS } from './shared-cautions';

/** Fat-free mass in kg from H²/R, weight, reactance and sex. */
export const FFM_KYLE_2001: Equation = {
  id: 'ffm-kyle-2001',
  name: 'Kyle 2001',
  quantity: 'ffm',
  unit: 'kg',
  version: 1,
  branches: [
    {
      intercept: -4.104,
      terms: [
        { coefficient: 0.518, regressor: 'height2_per_resistance' },
        { coefficient: 0.231, regressor: 'weight' },
        { coefficient: 0.13, regressor: 'reactance' },
        { coefficient: 4.229, regressor: 'sex' },
      ],
    },
  ],
  sexCoding: { M: 1, F: 0 },
  population: {
    description: '343 healthy white adults (202 men, 141 women)',
    ancestry: 'white',
    n: 343,
    ageYears: [20, 94],
    bmi: [17, 33.8],
  },
  posture: 'lying',
  electrodePath: 'hand-to-foot',
  frequencyKhz: 50,
  referenceMethod: 'DXA',
  fit: { r: 0.986, see: 1.72 },
  citation: {
    id: 'kyle-2001',
    authors: ['Kyle UG', 'Genton L', 'Karsegard L', 'Slosman DO', 'Pichard C'],
    journal: 'Nutrition',
    year: 2001,
    volume: '17',
    issue: '3',
    pages: '248–253',
    doi: '10.1016/S0899-9007(00)00553-0',
    fromMemory: ['doi'],
  },
  verification: 'read-in-abstract',
  verificationNote:
    'All five coefficients, the sex coding, n and the BMI range were read in the journal’s abstract; the abstract gives the ages as 20–94 and as 22–94 years.',
  cautions: [SPREAD_BETWEEN_EQUATIONS],
};
