import type { CutOff, CutOffBranch } from './cut-off';
import { ADULTS, bySex } from './ladder';
import { BESIDE_STRENGTH, metAbove, metBelow } from './muscle-words';

const shared = {
  version: 1,
  limits: { notInPregnancy: true },
  citation: {
    id: 'espen-easo-2022',
    authors: ['Donini LM'],
    andOthers: true,
    journal: 'Clin Nutr',
    year: 2022,
    volume: '41',
    pages: '990–1000',
    doi: '10.1016/j.clnu.2021.11.014',
  },
  verification: 'from-memory',
  verificationNote: 'The procedure was read in the abstract; this candidate value and its bound are from memory.',
  cautions: [
    BESIDE_STRENGTH,
    'A candidate value: it belongs to a procedure that begins with a screening and an altered function.',
  ],
} as const;

const fat = (ageFrom: number, ageBelow: number, M: number, F: number): readonly CutOffBranch[] =>
  bySex({ ageFrom, ageBelow }, { M, F }, metAbove('fat', '% of weight'));

/** Candidate values of the two European societies for low muscle and high fat at once; from memory. */
export const ESPEN_EASO_2022: readonly CutOff[] = [
  {
    ...shared,
    id: 'espen-easo-smm-percent',
    name: 'ESPEN/EASO 2022, SMM/weight by impedance',
    quantity: 'smm_percent',
    methods: ['bia'],
    equationIds: ['smm-janssen-2000'],
    group: null,
    branches: bySex(ADULTS, { M: 37, F: 27.6 }, metBelow('SMM', '% of weight')),
    boundRule: 'Used with <; Janssen 2002 counts the limit itself.',
  },
  {
    ...shared,
    id: 'espen-easo-asm-percent',
    name: 'ESPEN/EASO 2022, ASM/weight by DXA',
    quantity: 'asm_percent',
    methods: ['dxa'],
    group: null,
    branches: bySex(ADULTS, { M: 25.7, F: 19.4 }, metBelow('ASM', '% of weight')),
    boundRule: 'Used with <.',
  },
  {
    ...shared,
    id: 'espen-easo-fat-percent',
    name: 'ESPEN/EASO 2022, fat by age',
    quantity: 'fat_percent',
    methods: ['bia', 'dxa'],
    group: 'white people',
    branches: [...fat(20, 40, 26, 39), ...fat(40, 60, 29, 41), ...fat(60, 80, 31, 43)],
    boundRule: 'Used with >.',
  },
];
