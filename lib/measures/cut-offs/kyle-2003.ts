import type { CutOff } from './cut-off';
import { ADULTS, below, bySex, ladder, upTo } from './ladder';

const shared = {
  version: 1,
  methods: ['bia'],
  equationIds: ['ffm-kyle-2001'],
  group: 'white people in Switzerland',
  limits: { notInPregnancy: true },
  boundRule: 'The ends of the printed range belong to it; the value at a BMI of 30 begins the last range.',
  citation: {
    id: 'kyle-2003-indices',
    authors: ['Kyle UG'],
    andOthers: true,
    journal: 'Nutrition',
    year: 2003,
    volume: '19',
    pages: '597–604',
    fromMemory: ['journal', 'year', 'volume', 'pages'],
  },
  verification: 'from-memory',
  verificationNote: 'Values, bounds and the equation behind them are from memory.',
  cautions: ['Matched to BMI limits in 5,635 adults; a comparison with them, not a judgement.'],
} as const;

const matched = (index: string) => (limits: readonly [number, number, number]) => {
  const [low, high, veryHigh] = limits;
  return ladder(
    [
      below(low, { id: 'below', words: `${index} below the range that matches a BMI of 18.5–24.9 (${low} kg/m²).` }),
      upTo(high, {
        id: 'within',
        words: `${index} in the range that matches a BMI of 18.5–24.9 (${low}–${high} kg/m²).`,
      }),
      below(veryHigh, {
        id: 'above',
        words: `${index} in the range that matches a BMI of 25 to below 30 (above ${high} kg/m²).`,
      }),
    ],
    { id: 'far-above', words: `${index} in the range that matches a BMI of 30 and above (from ${veryHigh} kg/m²).` },
  );
};

/** FFMI and FMI that match the usual BMI limits; from memory. */
export const KYLE_2003: readonly CutOff[] = [
  {
    ...shared,
    id: 'ffmi-kyle-2003',
    name: 'Kyle 2003, FFMI matched to BMI',
    quantity: 'ffmi',
    branches: bySex(ADULTS, { M: [16.7, 19.8, 21.7], F: [14.6, 16.8, 18.2] }, matched('FFMI')),
  },
  {
    ...shared,
    id: 'fmi-kyle-2003',
    name: 'Kyle 2003, FMI matched to BMI',
    quantity: 'fmi',
    branches: bySex(ADULTS, { M: [1.8, 5.2, 8.3], F: [3.9, 8.2, 11.8] }, matched('FMI')),
  },
];
