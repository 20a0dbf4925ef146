import type { Equation } from '../equation';
import { SPREAD_BETWEEN_EQUATIONS } from './shared-cautions';

/** Fat-free mass in kg of Asian Indian adults, a form for each sex. */
export const FFM_RUSH_2006: Equation = {
  id: 'ffm-rush-2006',
  name: 'Rush 2006',
  quantity: 'ffm',
  unit: 'kg',
  version: 1,
  branches: [
    {
      sex: 'M',
      intercept: -33.382,
      terms: [
        { coefficient: 0.382, regressor: 'height2_per_resistance' },
        { coefficient: 0.167, regressor: 'weight' },
        { coefficient: 0.32, regressor: 'height' },
      ],
    },
    {
      sex: 'F',
      intercept: 5.959,
      terms: [
        { coefficient: 0.456, regressor: 'height2_per_resistance' },
        { coefficient: 0.127, regressor: 'weight' },
        { coefficient: 0.0746, regressor: 'reactance' },
      ],
    },
  ],
  sexCoding: { M: 1, F: 0 },
  population: {
    ancestry: 'Asian and Fijian Indian',
    description: '211 Asian and Fijian Indian adults (110 men, 101 women), from 20 to over 60 years',
    n: 211,
    ageFrom: 20,
  },
  posture: 'lying',
  electrodePath: 'hand-to-foot',
  frequencyKhz: 50,
  referenceMethod: 'DXA',
  fit: { words: 'R² 0.84 (men), 0.70 (women)' },
  citation: { id: 'rush-2006', authors: ['Rush EC'], andOthers: true, year: 2006, fromMemory: ['authors', 'year'] },
  verification: 'read-in-secondary-text',
  verificationNote:
    'Both forms, the frequency, n and R² were read in a text that compares equations in Indian adults; the year is from memory.',
  cautions: ['Made in Asian and Fijian Indian adults without diabetes (the same text).', SPREAD_BETWEEN_EQUATIONS],
};
