import type { Citation } from '../citation';
import type { Equation, Population } from '../equation';

const CITATION: Citation = {
  id: 'henry-2005',
  authors: ['Henry CJK'],
  journal: 'Public Health Nutr',
  year: 2005,
  volume: '8',
  issue: '7A',
  pages: '1133–1152',
  doi: '10.1079/PHN2005801',
  fromMemory: ['authors'],
};

const POPULATION: Population = {
  description: 'a database of people of all ages; these forms are for adults',
  n: 10552,
  ageFrom: 18,
};

/** Basal metabolic rate in kcal/d from weight and height, by sex and age band of adults. */
export const REE_HENRY_2005: Equation = {
  id: 'ree-henry-2005',
  name: 'Henry 2005 (weight, height)',
  quantity: 'ree',
  unit: 'kcal/d',
  version: 1,
  branches: [
    {
      sex: 'M',
      ageFrom: 18,
      ageBelow: 30,
      intercept: 113,
      terms: [
        { coefficient: 14.4, regressor: 'weight' },
        { coefficient: 3.13, regressor: 'height' },
      ],
    },
    {
      sex: 'M',
      ageFrom: 30,
      ageBelow: 60,
      intercept: -137,
      terms: [
        { coefficient: 11.4, regressor: 'weight' },
        { coefficient: 5.41, regressor: 'height' },
      ],
    },
    {
      sex: 'M',
      ageFrom: 60,
      intercept: -256,
      terms: [
        { coefficient: 11.4, regressor: 'weight' },
        { coefficient: 5.41, regressor: 'height' },
      ],
    },
    {
      sex: 'F',
      ageFrom: 18,
      ageBelow: 30,
      intercept: -282,
      terms: [
        { coefficient: 10.4, regressor: 'weight' },
        { coefficient: 6.15, regressor: 'height' },
      ],
    },
    {
      sex: 'F',
      ageFrom: 30,
      ageBelow: 60,
      intercept: -11.6,
      terms: [
        { coefficient: 8.18, regressor: 'weight' },
        { coefficient: 5.02, regressor: 'height' },
      ],
    },
    {
      sex: 'F',
      ageFrom: 60,
      intercept: 10.7,
      terms: [
        { coefficient: 8.52, regressor: 'weight' },
        { coefficient: 4.21, regressor: 'height' },
      ],
    },
  ],
  sexCoding: { M: 1, F: 0 },
  population: POPULATION,
  posture: null,
  electrodePath: null,
  frequencyKhz: null,
  referenceMethod: 'not stated',
  fit: {},
  citation: CITATION,
  verification: 'read-in-secondary-text',
  verificationNote: 'Coefficients and n were read in research notes that call themselves an unverified transcription.',
  cautions: [
    'The notes call their own transcription unverified.',
    'The forms for children were not at hand; under 18 years there is no result.',
  ],
};

/** Basal metabolic rate in kcal/d from weight, by sex and age band of adults. */
export const REE_HENRY_2005_WEIGHT: Equation = {
  id: 'ree-henry-2005-weight',
  name: 'Henry 2005 (weight)',
  quantity: 'ree',
  unit: 'kcal/d',
  version: 1,
  branches: [
    { sex: 'M', ageFrom: 18, ageBelow: 30, intercept: 545, terms: [{ coefficient: 16.0, regressor: 'weight' }] },
    { sex: 'M', ageFrom: 30, ageBelow: 60, intercept: 593, terms: [{ coefficient: 14.2, regressor: 'weight' }] },
    { sex: 'M', ageFrom: 60, intercept: 514, terms: [{ coefficient: 13.5, regressor: 'weight' }] },
    { sex: 'F', ageFrom: 18, ageBelow: 30, intercept: 558, terms: [{ coefficient: 13.1, regressor: 'weight' }] },
    { sex: 'F', ageFrom: 30, ageBelow: 60, intercept: 694, terms: [{ coefficient: 9.74, regressor: 'weight' }] },
    { sex: 'F', ageFrom: 60, intercept: 569, terms: [{ coefficient: 10.1, regressor: 'weight' }] },
  ],
  sexCoding: { M: 1, F: 0 },
  population: POPULATION,
  posture: null,
  electrodePath: null,
  frequencyKhz: null,
  referenceMethod: 'not stated',
  fit: {},
  citation: CITATION,
  verification: 'from-memory',
  verificationNote:
    'From memory: check against the paper before use. Only the form for men of 30–60 years was seen in a later text.',
  cautions: ['The forms for children were not at hand; under 18 years there is no result.'],
};
