import type { Equation } from '../equation';
import { SPREAD_BETWEEN_EQUATIONS } from './shared-cautions';

/** Fat-free mass in kg from H², R, weight and age, a form for each sex: the generalised equations. */
export const FFM_SEGAL_1988: Equation = {
  id: 'ffm-segal-1988',
  name: 'Segal 1988',
  quantity: 'ffm',
  unit: 'kg',
  version: 1,
  branches: [
    {
      sex: 'M',
      intercept: 22.66827,
      terms: [
        { coefficient: 0.00132, regressor: 'height2' },
        { coefficient: -0.04394, regressor: 'resistance' },
        { coefficient: 0.3052, regressor: 'weight' },
        { coefficient: -0.1676, regressor: 'age' },
      ],
    },
    {
      sex: 'F',
      intercept: 14.59453,
      terms: [
        { coefficient: 0.00108, regressor: 'height2' },
        { coefficient: -0.0209, regressor: 'resistance' },
        { coefficient: 0.23199, regressor: 'weight' },
        { coefficient: -0.06777, regressor: 'age' },
      ],
    },
  ],
  sexCoding: { M: 1, F: 0 },
  population: {
    description: '1567 adults of four laboratories, 3–56 % body fat',
    n: 1567,
    ageYears: [17, 62],
    fromMemory: ['n', 'ageYears'],
  },
  posture: 'lying',
  electrodePath: 'hand-to-foot',
  frequencyKhz: 50,
  referenceMethod: 'not stated',
  fit: { words: 'SEE 2.0–2.5 kg', fromMemory: true },
  citation: {
    id: 'segal-1988',
    authors: ['Segal KR', 'Van Loan M', 'Fitzgerald PI', 'Hodgdon JA', 'Van Itallie TB'],
    journal: 'Am J Clin Nutr',
    year: 1988,
    volume: '47',
    pages: '7–14',
  },
  verification: 'from-memory',
  verificationNote: 'From memory: check against the paper before use. Coefficients, population and fit are remembered.',
  cautions: [
    'The paper also has forms by body fat, left out here: choosing one needs the body fat that is to be estimated.',
    SPREAD_BETWEEN_EQUATIONS,
  ],
};
