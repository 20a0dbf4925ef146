import type { CutOff } from './cut-off';
import { ADULTS, below, bySex, ladder, upTo } from './ladder';

const shared = {
  version: 1,
  group: null,
  citation: {
    id: 'espen-2015',
    authors: ['Cederholm T', 'Bosaeus I', 'Barazzoni R'],
    andOthers: true,
    journal: 'Clin Nutr',
    year: 2015,
    volume: '34',
    pages: '335–340',
    doi: '10.1016/j.clnu.2015.03.001',
  },
  verification: 'read-in-abstract',
  verificationNote: 'Every value was read in the abstract.',
} as const;

const SCREENING = 'A screening step comes first and a professional judges the whole: a criterion alone says little.';
const TOGETHER = 'The consensus counts it only together with an unintended weight loss.';

const met = (what: string) =>
  ({ id: 'met', words: `One phenotypic criterion is met: ${what}.`, criterion: 'met' }) as const;
const notMet = { id: 'not-met', words: 'This phenotypic criterion is not met.', criterion: 'not-met' } as const;

const low = (what: string, limit: number, also = '') =>
  ladder([below(limit, met(`${what} below ${limit} kg/m²${also}`))], notMet);
const loss = (limit: number, when: string) =>
  ladder([upTo(limit, notMet)], met(`weight loss above ${limit} % ${when}`));
const withLoss = ' (counts only with an unintended weight loss)';

/** The criteria of the European Society for Clinical Nutrition and Metabolism, 2015: one cut-off each. */
export const ESPEN_2015: readonly CutOff[] = [
  {
    ...shared,
    id: 'espen-2015-bmi',
    name: 'ESPEN 2015, BMI alone',
    quantity: 'bmi',
    methods: ['weighing'],
    branches: [{ ...ADULTS, intervals: low('BMI', 18.5) }],
    limits: { notInPregnancy: true },
    boundRule: 'Printed as <.',
    cautions: [SCREENING],
  },
  {
    ...shared,
    id: 'espen-2015-weight-loss-3-months',
    name: 'ESPEN 2015, weight loss over 3 months',
    quantity: 'weight_loss',
    methods: ['weighing'],
    branches: [{ ...ADULTS, intervals: loss(5, 'over 3 months') }],
    limits: { upToMonths: 3, onlyUnintended: true, notInPregnancy: true },
    boundRule: 'Printed as >.',
    cautions: [SCREENING, 'The consensus counts it only together with a low BMI for the age or a low FFMI.'],
  },
  {
    ...shared,
    id: 'espen-2015-weight-loss',
    name: 'ESPEN 2015, weight loss over any time',
    quantity: 'weight_loss',
    methods: ['weighing'],
    branches: [{ ...ADULTS, intervals: loss(10, 'over any time') }],
    limits: { onlyUnintended: true, notInPregnancy: true },
    boundRule: 'Printed as >.',
    cautions: [SCREENING, 'The consensus counts it only together with a low BMI for the age or a low FFMI.'],
  },
  {
    ...shared,
    id: 'espen-2015-bmi-with-loss',
    name: 'ESPEN 2015, BMI beside weight loss',
    quantity: 'bmi',
    methods: ['weighing'],
    branches: [
      { ageFrom: 18, ageBelow: 70, intervals: low('BMI', 20, withLoss) },
      { ageFrom: 70, intervals: low('BMI', 22, withLoss) },
    ],
    limits: { onlyUnintended: true, notInPregnancy: true },
    boundRule: 'Printed as <.',
    cautions: [SCREENING, TOGETHER],
  },
  {
    ...shared,
    id: 'espen-2015-ffmi-with-loss',
    name: 'ESPEN 2015, FFMI beside weight loss',
    quantity: 'ffmi',
    methods: ['bia', 'dxa'],
    branches: bySex(ADULTS, { M: 17, F: 15 }, (limit) => low('FFMI', limit, withLoss)),
    limits: { onlyUnintended: true, notInPregnancy: true },
    boundRule: 'Printed as <.',
    cautions: [
      SCREENING,
      TOGETHER,
      'The abstract names no method and no equation; the same person’s FFMI differs between equations.',
    ],
  },
];
