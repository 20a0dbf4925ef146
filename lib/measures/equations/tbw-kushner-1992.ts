import type { Equation } from '../equation';

/** Total body water in L from H²/R and weight, at all ages. */
export const TBW_KUSHNER_1992: Equation = {
  id: 'tbw-kushner-1992',
  name: 'Kushner 1992',
  quantity: 'tbw',
  unit: 'L',
  version: 1,
  branches: [
    {
      intercept: 0.04,
      terms: [
        { coefficient: 0.59, regressor: 'height2_per_resistance' },
        { coefficient: 0.065, regressor: 'weight' },
      ],
    },
  ],
  sexCoding: { M: 1, F: 0 },
  population: { description: 'people of all ages from the newborn on, both sexes' },
  posture: 'lying',
  electrodePath: 'hand-to-foot',
  frequencyKhz: 50,
  referenceMethod: 'not stated',
  fit: {},
  citation: {
    id: 'kushner-1992',
    authors: ['Kushner RF'],
    andOthers: true,
    journal: 'Am J Clin Nutr',
    year: 1992,
    volume: '56',
    pages: '835–839',
    fromMemory: ['authors'],
  },
  verification: 'read-in-secondary-text',
  verificationNote: 'Read in a compendium of medical equations; n and fit were not given there.',
  cautions: ['The resistance is the mean of 3–5 readings (the compendium).'],
};
