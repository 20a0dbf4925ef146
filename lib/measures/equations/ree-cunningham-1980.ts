import type { Equation } from '../equation';
import { ENERGY_FROM_COMPOSITION } from './shared-cautions';

/** Resting energy expenditure in kcal/d from lean body mass, taken as fat-free mass. */
export const REE_CUNNINGHAM_1980: Equation = {
  id: 'ree-cunningham-1980',
  name: 'Cunningham 1980',
  quantity: 'ree',
  unit: 'kcal/d',
  version: 1,
  branches: [{ intercept: 500, terms: [{ coefficient: 22, regressor: 'ffm' }] }],
  sexCoding: { M: 1, F: 0 },
  population: { description: 'the people of Harris and Benedict 1919, analysed anew' },
  posture: null,
  electrodePath: null,
  frequencyKhz: null,
  referenceMethod: 'not stated',
  fit: {},
  citation: {
    id: 'cunningham-1980',
    authors: ['Cunningham JJ'],
    journal: 'Am J Clin Nutr',
    year: 1980,
    volume: '33',
    pages: '2372–2374',
    fromMemory: ['authors'],
  },
  verification: 'read-in-secondary-text',
  verificationNote: 'Read in a later text.',
  cautions: [ENERGY_FROM_COMPOSITION],
};
