import type { Equation } from '../equation';

/** Total body water in L from H²/R and weight, a form for each sex. */
export const TBW_KUSHNER_SCHOELLER_1986: Equation = {
  id: 'tbw-kushner-schoeller-1986',
  name: 'Kushner & Schoeller 1986',
  quantity: 'tbw',
  unit: 'L',
  version: 1,
  branches: [
    {
      sex: 'M',
      intercept: 8.399,
      terms: [
        { coefficient: 0.396, regressor: 'height2_per_resistance' },
        { coefficient: 0.143, regressor: 'weight' },
      ],
    },
    {
      sex: 'F',
      intercept: 8.315,
      terms: [
        { coefficient: 0.382, regressor: 'height2_per_resistance' },
        { coefficient: 0.105, regressor: 'weight' },
      ],
    },
  ],
  sexCoding: { M: 1, F: 0 },
  population: { description: 'not remembered' },
  posture: 'lying',
  electrodePath: 'hand-to-foot',
  frequencyKhz: 50,
  referenceMethod: 'not stated',
  fit: {},
  citation: {
    id: 'kushner-schoeller-1986',
    authors: ['Kushner RF', 'Schoeller DA'],
    journal: 'Am J Clin Nutr',
    year: 1986,
    volume: '44',
    pages: '417–424',
    fromMemory: ['authors'],
  },
  verification: 'from-memory',
  verificationNote: 'From memory: check against the paper before use. The coefficients are remembered.',
  cautions: ['The paper also has a pooled form, left out here.'],
};
