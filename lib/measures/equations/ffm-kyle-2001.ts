import type { Equation } from '../equation';

/**
 * Fat-free mass in kg. Kyle UG, Genton L, Karsegard L, Slosman DO, Pichard C. Nutrition 2001;17(3):248–253.
 * All five coefficients, the sex coding, n and the BMI range were read in the journal's abstract; the abstract itself
 * gives the ages as 20–94 and as 22–94 years. r 0.986, standard error of the estimate 1.72 kg.
 */
export const FFM_KYLE_2001: Equation = {
  id: 'ffm-kyle-2001',
  name: 'Kyle 2001',
  intercept: -4.104,
  terms: [
    { coefficient: 0.518, regressor: 'height2_per_resistance' },
    { coefficient: 0.231, regressor: 'weight' },
    { coefficient: 0.13, regressor: 'reactance' },
    { coefficient: 4.229, regressor: 'sex_male' },
  ],
  sexCoding: { M: 1, F: 0 },
  population: {
    description: '343 healthy white adults (202 men, 141 women)',
    ageYears: [20, 94],
    bmi: [17, 33.8],
  },
  posture: 'lying',
  electrodePath: 'hand-to-foot',
  frequencyKhz: 50,
  referenceMethod: 'DXA',
  source: 'Kyle UG et al. Nutrition 2001;17:248–253',
  verification: 'read-in-abstract',
};
