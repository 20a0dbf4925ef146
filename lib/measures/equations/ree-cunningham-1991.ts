import type { Equation } from '../equation';
import { ENERGY_FROM_COMPOSITION } from './shared-cautions';

/** Resting energy expenditure in kcal/d from fat-free mass. */
export const REE_CUNNINGHAM_1991: Equation = {
  id: 'ree-cunningham-1991',
  name: 'Cunningham 1991',
  quantity: 'ree',
  unit: 'kcal/d',
  version: 1,
  branches: [{ intercept: 370, terms: [{ coefficient: 21.6, regressor: 'ffm' }] }],
  sexCoding: { M: 1, F: 0 },
  population: { description: 'not stated where the equation was read' },
  posture: null,
  electrodePath: null,
  frequencyKhz: null,
  referenceMethod: 'not stated',
  fit: { words: 'fat-free mass explains 65–90 % of the variance' },
  citation: {
    id: 'cunningham-1991',
    authors: ['Cunningham JJ'],
    journal: 'Am J Clin Nutr',
    year: 1991,
    volume: '54',
    pages: '963–969',
    fromMemory: ['authors'],
  },
  verification: 'read-in-secondary-text',
  verificationNote:
    'Equation and explained variance were read in later texts; one notes that an index prints the plus sign as ±.',
  cautions: [ENERGY_FROM_COMPOSITION],
};
