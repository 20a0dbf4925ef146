import type { CutOff } from './cut-off';
import { ADULTS, bySex } from './ladder';
import { BESIDE_STRENGTH, metAbove, metBelow, metUpTo } from './muscle-words';

const shared = {
  version: 1,
  group: null,
  limits: { notInPregnancy: true },
  citation: {
    id: 'ewgsop2-2019',
    authors: ['Cruz-Jentoft AJ'],
    andOthers: true,
    journal: 'Age Ageing',
    year: 2019,
    volume: '48',
    pages: '16–31 (correction 48:601)',
  },
  verification: 'read-in-secondary-text',
  cautions: [BESIDE_STRENGTH, 'Made for older people; the ages were not read.'],
} as const;

const READ = 'The values were read in a table of another journal.';
const LESS = 'Used with <. The table that was read prints ≤.';

/** The values of the European working group on sarcopenia in older people, second version. */
export const EWGSOP2_2019: readonly CutOff[] = [
  {
    ...shared,
    id: 'ewgsop2-asmi',
    name: 'EWGSOP2 2019, ASM/H²',
    quantity: 'asmi',
    methods: ['bia', 'dxa'],
    branches: bySex(ADULTS, { M: 7, F: 5.5 }, metBelow('ASM/H²', 'kg/m²')),
    boundRule: LESS,
    verificationNote: `${READ} That the first printing gave 6.0 for women and the correction 5.5 is from memory.`,
  },
  {
    ...shared,
    id: 'ewgsop2-asm',
    name: 'EWGSOP2 2019, ASM',
    quantity: 'asm',
    methods: ['bia', 'dxa'],
    branches: bySex(ADULTS, { M: 20, F: 15 }, metBelow('ASM', 'kg')),
    boundRule: 'Used with <, from memory.',
    verification: 'from-memory',
    verificationNote: 'Values and bound are from memory.',
  },
  {
    ...shared,
    id: 'ewgsop2-grip',
    name: 'EWGSOP2 2019, grip strength',
    quantity: 'grip',
    methods: ['dynamometer'],
    branches: bySex(ADULTS, { M: 27, F: 16 }, metBelow('grip strength', 'kg')),
    boundRule: LESS,
    verificationNote: READ,
    cautions: ['Made for older people; the ages were not read.'],
  },
  {
    ...shared,
    id: 'ewgsop2-gait',
    name: 'EWGSOP2 2019, gait speed',
    quantity: 'gait',
    methods: ['walk'],
    branches: [{ ...ADULTS, intervals: metUpTo('gait speed', 'm/s')(0.8) }],
    boundRule: 'Printed as ≤.',
    verificationNote: READ,
    cautions: ['Made for older people; the ages were not read.'],
  },
  {
    ...shared,
    id: 'ewgsop2-chair',
    name: 'EWGSOP2 2019, five chair stands',
    quantity: 'chair',
    methods: ['chair-stands'],
    branches: [{ ...ADULTS, intervals: metAbove('five chair stands', 's')(15) }],
    boundRule: 'Printed as >.',
    verificationNote: READ,
    cautions: ['Made for older people; the ages were not read.'],
  },
];
