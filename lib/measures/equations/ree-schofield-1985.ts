import type { Equation } from '../equation';

/** Basal metabolic rate in kcal/d from weight, by sex and age band; a printed edge belongs to the band above it. */
export const REE_SCHOFIELD_1985: Equation = {
  id: 'ree-schofield-1985',
  name: 'Schofield 1985',
  quantity: 'ree',
  unit: 'kcal/d',
  version: 1,
  branches: [
    { sex: 'M', ageBelow: 3, intercept: -30.4, terms: [{ coefficient: 59.512, regressor: 'weight' }] },
    { sex: 'M', ageFrom: 3, ageBelow: 10, intercept: 504.3, terms: [{ coefficient: 22.706, regressor: 'weight' }] },
    { sex: 'M', ageFrom: 10, ageBelow: 18, intercept: 658.2, terms: [{ coefficient: 17.686, regressor: 'weight' }] },
    { sex: 'M', ageFrom: 18, ageBelow: 30, intercept: 692.2, terms: [{ coefficient: 15.057, regressor: 'weight' }] },
    { sex: 'M', ageFrom: 30, ageBelow: 60, intercept: 873.1, terms: [{ coefficient: 11.472, regressor: 'weight' }] },
    { sex: 'M', ageFrom: 60, intercept: 587.7, terms: [{ coefficient: 11.711, regressor: 'weight' }] },
    { sex: 'F', ageBelow: 3, intercept: -31.1, terms: [{ coefficient: 58.317, regressor: 'weight' }] },
    { sex: 'F', ageFrom: 3, ageBelow: 10, intercept: 485.9, terms: [{ coefficient: 20.315, regressor: 'weight' }] },
    { sex: 'F', ageFrom: 10, ageBelow: 18, intercept: 692.6, terms: [{ coefficient: 13.384, regressor: 'weight' }] },
    { sex: 'F', ageFrom: 18, ageBelow: 30, intercept: 486.6, terms: [{ coefficient: 14.818, regressor: 'weight' }] },
    { sex: 'F', ageFrom: 30, ageBelow: 60, intercept: 845.6, terms: [{ coefficient: 8.126, regressor: 'weight' }] },
    { sex: 'F', ageFrom: 60, intercept: 658.5, terms: [{ coefficient: 9.082, regressor: 'weight' }] },
  ],
  sexCoding: { M: 1, F: 0 },
  population: { description: 'people of all ages; a database of 7173', n: 7173 },
  posture: null,
  electrodePath: null,
  frequencyKhz: null,
  referenceMethod: 'not stated',
  fit: { words: 'SEE in kcal/d by age band: men 70, 67, 105, 153, 167, 164; women 59, 70, 111, 119, 111, 108' },
  citation: { id: 'schofield-1985', authors: ['Schofield WN'], year: 1985, fromMemory: ['authors'] },
  verification: 'read-in-secondary-text',
  verificationNote:
    'The table was read in an encyclopedia on two mirrors and, in MJ, on a second independent page; the sizes of the database in the abstract of Henry 2005.',
  cautions: [
    'Of the 7173 in the database, 3388 were Italian (Henry 2005, abstract).',
    'The printed bands touch at 3, 10, 18, 30 and 60 years: here each edge belongs to the older band.',
    'Several public pages print these coefficients as those of Henry 2005 (comparison of the tables).',
  ],
};
