import type { Citation } from '../citation';
import type { CutOff, CutOffInterval } from './cut-off';
import { ADULTS, below, bySex, ladder, upTo } from './ladder';

const citation: Citation = {
  id: 'glim-2019',
  authors: ['Cederholm T', 'Jensen GL', 'Correia MITD'],
  andOthers: true,
  journal: 'Clin Nutr',
  year: 2019,
  volume: '38',
  pages: '1–9',
};

const read = {
  version: 1,
  citation,
  verification: 'read-in-secondary-text',
  verificationNote: 'Read in two summaries of the criteria.',
  cautions: ['A screening step and a cause judged by a professional belong to it: a criterion alone says little.'],
} as const;

const recalled = {
  ...read,
  verification: 'from-memory',
  verificationNote: 'An example of the paper’s supplement, from memory.',
  cautions: [...read.cautions, 'The paper leaves the value for muscle to the method and the region.'],
} as const;

const met = (id: string, what: string) =>
  ({ id, words: `One phenotypic criterion is met: ${what}.`, criterion: 'met' }) as const;
const notMet = { id: 'not-met', words: 'This phenotypic criterion is not met.', criterion: 'not-met' } as const;

const loss = (within: string, from: number, more: number): readonly CutOffInterval[] =>
  ladder(
    [upTo(from, notMet), upTo(more, met('met', `weight loss above ${from} % ${within}`))],
    met('met-above', `weight loss above ${more} % ${within}`),
  );

const weightLoss = { quantity: 'weight_loss', methods: ['weighing'], group: null } as const;
const lossRule =
  'Printed as ranges that share an end and as more than: the lower end itself does not count, the upper one belongs to the lower range.';

const lowBmi = (lower: number, upper: number): readonly CutOffInterval[] =>
  ladder(
    [below(lower, met('met-below', `BMI below ${lower} kg/m²`)), below(upper, met('met', `BMI below ${upper} kg/m²`))],
    notMet,
  );

const low = (what: string) => (at: number) => ladder([below(at, met('met', `${what} below ${at} kg/m²`))], notMet);

/** The phenotypic criteria of the Global Leadership Initiative on Malnutrition: one cut-off each. */
export const GLIM_2019: readonly CutOff[] = [
  {
    ...read,
    ...weightLoss,
    id: 'glim-weight-loss-within-6-months',
    name: 'GLIM 2019, weight loss within 6 months',
    branches: [{ ...ADULTS, intervals: loss('within 6 months', 5, 10) }],
    limits: { upToMonths: 6, onlyUnintended: true, notInPregnancy: true },
    boundRule: lossRule,
  },
  {
    ...read,
    ...weightLoss,
    id: 'glim-weight-loss-beyond-6-months',
    name: 'GLIM 2019, weight loss beyond 6 months',
    branches: [{ ...ADULTS, intervals: loss('beyond 6 months', 10, 20) }],
    limits: { overMonths: 6, onlyUnintended: true, notInPregnancy: true },
    boundRule: lossRule,
  },
  {
    ...read,
    id: 'glim-bmi',
    name: 'GLIM 2019, low BMI',
    quantity: 'bmi',
    methods: ['weighing'],
    group: null,
    branches: [
      { ageFrom: 18, ageBelow: 70, intervals: lowBmi(18.5, 20) },
      { ageFrom: 70, intervals: lowBmi(20, 22) },
    ],
    limits: { notInPregnancy: true },
    boundRule: 'Printed as <: the limit itself does not meet the criterion.',
  },
  {
    ...read,
    id: 'glim-bmi-asia',
    name: 'GLIM 2019, low BMI, Asia',
    quantity: 'bmi',
    methods: ['weighing'],
    group: 'Asian populations',
    branches: [
      { ageFrom: 18, ageBelow: 70, intervals: low('BMI')(18.5) },
      { ageFrom: 70, intervals: low('BMI')(20) },
    ],
    limits: { notInPregnancy: true },
    boundRule:
      'Printed as <: the limit itself does not meet the criterion. No second limit was agreed for Asia (from memory).',
  },
  {
    ...recalled,
    id: 'glim-ffmi',
    name: 'GLIM 2019, FFMI',
    quantity: 'ffmi',
    methods: ['bia', 'dxa'],
    group: null,
    branches: bySex(ADULTS, { M: 17, F: 15 }, low('FFMI')),
    limits: { notInPregnancy: true },
    boundRule: 'Printed as <.',
  },
  {
    ...recalled,
    id: 'glim-asmi-dxa',
    name: 'GLIM 2019, ASM/H² by DXA',
    quantity: 'asmi',
    methods: ['dxa'],
    group: null,
    branches: bySex(ADULTS, { M: 7, F: 5.5 }, low('ASM/H²')),
    limits: { notInPregnancy: true },
    boundRule: 'Printed as <.',
  },
  {
    ...recalled,
    id: 'glim-asmi-bia-asia',
    name: 'GLIM 2019, ASM/H² by impedance, Asia',
    quantity: 'asmi',
    methods: ['bia'],
    group: 'Asian populations',
    branches: bySex(ADULTS, { M: 7, F: 5.7 }, low('ASM/H²')),
    limits: { notInPregnancy: true },
    boundRule: 'Printed as <.',
  },
];
