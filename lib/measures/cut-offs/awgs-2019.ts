import type { CutOff } from './cut-off';
import { ADULTS, bySex } from './ladder';
import { BESIDE_STRENGTH, metBelow, metFrom } from './muscle-words';

const shared = {
  version: 1,
  group: 'Asian populations',
  limits: { notInPregnancy: true },
  citation: {
    id: 'awgs-2019',
    authors: ['Chen LK'],
    andOthers: true,
    journal: 'J Am Med Dir Assoc',
    year: 2020,
    volume: '21',
    pages: '300–307',
  },
  verification: 'read-in-secondary-text',
  verificationNote: 'The values were read in a table of another open paper.',
} as const;

const OLDER = 'Made for older people; the ages were not read.';

/** The values of the Asian working group for sarcopenia: impedance and DXA have their own. */
export const AWGS_2019: readonly CutOff[] = [
  {
    ...shared,
    id: 'awgs-asmi-bia',
    name: 'AWGS 2019, ASM/H² by impedance',
    quantity: 'asmi',
    methods: ['bia'],
    branches: bySex(ADULTS, { M: 7, F: 5.7 }, metBelow('ASM/H²', 'kg/m²')),
    boundRule: 'Printed as <.',
    cautions: [BESIDE_STRENGTH, OLDER, 'The table names no equation; equations differ.'],
  },
  {
    ...shared,
    id: 'awgs-asmi-dxa',
    name: 'AWGS 2019, ASM/H² by DXA',
    quantity: 'asmi',
    methods: ['dxa'],
    branches: bySex(ADULTS, { M: 7, F: 5.4 }, metBelow('ASM/H²', 'kg/m²')),
    boundRule: 'Printed as <.',
    cautions: [BESIDE_STRENGTH, OLDER],
  },
  {
    ...shared,
    id: 'awgs-grip',
    name: 'AWGS 2019, grip strength',
    quantity: 'grip',
    methods: ['dynamometer'],
    branches: bySex(ADULTS, { M: 28, F: 18 }, metBelow('grip strength', 'kg')),
    boundRule: 'Used with <; the note of the table gives the values alone.',
    cautions: [OLDER],
  },
  {
    ...shared,
    id: 'awgs-gait',
    name: 'AWGS 2019, gait speed',
    quantity: 'gait',
    methods: ['walk'],
    branches: [{ ...ADULTS, intervals: metBelow('gait speed', 'm/s')(1) }],
    boundRule: 'Printed as <.',
    cautions: [OLDER],
  },
  {
    ...shared,
    id: 'awgs-chair',
    name: 'AWGS 2019, five chair stands',
    quantity: 'chair',
    methods: ['chair-stands'],
    branches: [{ ...ADULTS, intervals: metFrom('five chair stands', 's')(12) }],
    boundRule: 'Printed as ≥.',
    cautions: [OLDER],
  },
];
