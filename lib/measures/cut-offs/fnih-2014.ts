import type { CutOff } from './cut-off';
import { ADULTS, bySex } from './ladder';
import { BESIDE_STRENGTH, metBelow } from './muscle-words';

const shared = {
  version: 1,
  group: null,
  limits: { notInPregnancy: true },
  boundRule: 'Printed as <.',
  citation: {
    id: 'fnih-2014',
    authors: ['Studenski SA'],
    andOthers: true,
    journal: 'J Gerontol A',
    year: 2014,
    volume: '69',
    pages: '547–558',
  },
  verification: 'read-in-secondary-text',
} as const;

/** The values of the Foundation for the National Institutes of Health sarcopenia project. */
export const FNIH_2014: readonly CutOff[] = [
  {
    ...shared,
    id: 'fnih-asm-bmi',
    name: 'FNIH 2014, ASM/BMI by DXA',
    quantity: 'asm_bmi',
    methods: ['dxa'],
    branches: bySex(ADULTS, { M: 0.789, F: 0.512 }, metBelow('ASM/BMI', 'm²')),
    verificationNote: 'The values were read in a table of another journal; that they are of DXA is from memory.',
    cautions: [BESIDE_STRENGTH, 'Made for older people; the ages were not read.'],
  },
  {
    ...shared,
    id: 'fnih-grip',
    name: 'FNIH 2014, grip strength',
    quantity: 'grip',
    methods: ['dynamometer'],
    branches: bySex(ADULTS, { M: 26, F: 16 }, metBelow('grip strength', 'kg')),
    verificationNote: 'The values were read in a table of another journal.',
    cautions: ['Made for older people; the ages were not read.'],
  },
];
