import type { Equation } from '../equation';

/**
 * Skeletal muscle mass in kg. Janssen I, Heymsfield SB, Baumgartner RN, Ross R. J Appl Physiol 2000;89:465–471.
 * Equation and fit (R² 0.86, standard error of the estimate 2.7 kg) were read on the paper's first page; n and ages are
 * from memory. Underestimates in Asian groups (same page).
 */
export const SMM_JANSSEN_2000: Equation = {
  id: 'smm-janssen-2000',
  name: 'Janssen 2000',
  intercept: 5.102,
  terms: [
    { coefficient: 0.401, regressor: 'height2_per_resistance' },
    { coefficient: 3.825, regressor: 'sex_male' },
    { coefficient: -0.071, regressor: 'age' },
  ],
  sexCoding: { M: 1, F: 0 },
  population: { description: '388 adults (from memory)', ageYears: [18, 86] },
  posture: 'lying',
  electrodePath: 'hand-to-foot',
  frequencyKhz: 50,
  referenceMethod: 'MRI',
  source: 'Janssen I et al. J Appl Physiol 2000;89:465–471',
  verification: 'read-in-abstract',
};
