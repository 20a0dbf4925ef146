import type { Equation } from '../equation';

/** Resting energy expenditure in kcal/d: the Harris–Benedict form fitted anew. */
export const REE_ROZA_SHIZGAL_1984: Equation = {
  id: 'ree-roza-shizgal-1984',
  name: 'Roza & Shizgal 1984',
  quantity: 'ree',
  unit: 'kcal/d',
  version: 1,
  branches: [
    {
      sex: 'M',
      intercept: 88.362,
      terms: [
        { coefficient: 13.397, regressor: 'weight' },
        { coefficient: 4.799, regressor: 'height' },
        { coefficient: -5.677, regressor: 'age' },
      ],
    },
    {
      sex: 'F',
      intercept: 447.593,
      terms: [
        { coefficient: 9.247, regressor: 'weight' },
        { coefficient: 3.098, regressor: 'height' },
        { coefficient: -4.33, regressor: 'age' },
      ],
    },
  ],
  sexCoding: { M: 1, F: 0 },
  population: { description: '337 people: the 239 of 1919 and 98 more', n: 337 },
  posture: null,
  electrodePath: null,
  frequencyKhz: null,
  referenceMethod: 'not stated',
  fit: { words: 'precision ± 14 %' },
  citation: {
    id: 'roza-shizgal-1984',
    authors: ['Roza AM', 'Shizgal HM'],
    journal: 'Am J Clin Nutr',
    year: 1984,
    volume: '40',
    pages: '168–182',
    fromMemory: ['authors'],
  },
  verification: 'read-in-secondary-text',
  verificationNote: 'The coefficients were read in a later text, n and the precision in the abstract.',
  cautions: ['One person’s expenditure is met within ± 14 % (the abstract).'],
};
