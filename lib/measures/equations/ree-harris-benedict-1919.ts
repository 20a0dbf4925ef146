import type { Equation } from '../equation';

/** Resting energy expenditure in kcal/d from weight, height and age, a form for each sex. */
export const REE_HARRIS_BENEDICT_1919: Equation = {
  id: 'ree-harris-benedict-1919',
  name: 'Harris–Benedict 1919',
  quantity: 'ree',
  unit: 'kcal/d',
  version: 1,
  branches: [
    {
      sex: 'M',
      intercept: 66.473,
      terms: [
        { coefficient: 13.7516, regressor: 'weight' },
        { coefficient: 5.0033, regressor: 'height' },
        { coefficient: -6.755, regressor: 'age' },
      ],
    },
    {
      sex: 'F',
      intercept: 655.0955,
      terms: [
        { coefficient: 9.5634, regressor: 'weight' },
        { coefficient: 1.8496, regressor: 'height' },
        { coefficient: -4.6756, regressor: 'age' },
      ],
    },
  ],
  sexCoding: { M: 1, F: 0 },
  population: { description: '239 people', n: 239 },
  posture: null,
  electrodePath: null,
  frequencyKhz: null,
  referenceMethod: 'not stated',
  fit: {},
  citation: { id: 'harris-benedict-1919', authors: ['Harris JA', 'Benedict FG'], year: 1919, fromMemory: ['authors'] },
  verification: 'read-in-secondary-text',
  verificationNote: 'The coefficients were read in two later texts, n in the abstract of Roza and Shizgal 1984.',
  cautions: ['Was 5 % above the measured expenditure of 498 adults (Mifflin 1990, first page).'],
};
