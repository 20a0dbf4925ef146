import type { Equation } from '../equation';

/** Total body water in L from height, weight and, for men, age: no impedance. */
export const TBW_WATSON_1980: Equation = {
  id: 'tbw-watson-1980',
  name: 'Watson 1980',
  quantity: 'tbw',
  unit: 'L',
  version: 1,
  branches: [
    {
      sex: 'M',
      intercept: 2.447,
      terms: [
        { coefficient: -0.09516, regressor: 'age' },
        { coefficient: 0.1074, regressor: 'height' },
        { coefficient: 0.3362, regressor: 'weight' },
      ],
    },
    {
      sex: 'F',
      intercept: -2.097,
      terms: [
        { coefficient: 0.1069, regressor: 'height' },
        { coefficient: 0.2466, regressor: 'weight' },
      ],
    },
  ],
  sexCoding: { M: 1, F: 0 },
  population: { description: '723 adults (458 men, 265 women)', n: 723 },
  posture: null,
  electrodePath: null,
  frequencyKhz: null,
  referenceMethod: 'not stated',
  fit: { words: 'SD 3.76 L (men), 3.60 L (women)' },
  citation: {
    id: 'watson-1980',
    authors: ['Watson PE'],
    andOthers: true,
    journal: 'Am J Clin Nutr',
    year: 1980,
    volume: '33',
    pages: '27–39',
    fromMemory: ['authors'],
  },
  verification: 'read-in-abstract',
  verificationNote:
    'Both forms, n and their standard deviations were read on the abstract’s page; ages were not given there.',
  cautions: ['Rests on height and weight alone: it follows a change of weight, not of water (form of the equation).'],
};
