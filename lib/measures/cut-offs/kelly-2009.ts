import type { CutOff } from './cut-off';
import { ADULTS, below, bySex, ladder, upTo } from './ladder';

const unit = 'kg/m²';

/** Classes of the fat mass index by DXA; the limits are from memory. */
export const KELLY_2009: CutOff = {
  id: 'fmi-kelly-2009',
  version: 1,
  name: 'Kelly 2009, FMI classes by DXA',
  quantity: 'fmi',
  methods: ['dxa'],
  group: null,
  branches: bySex(
    ADULTS,
    { M: [2, 2.3, 3, 6, 9, 12, 15], F: [3.5, 4, 5, 9, 13, 17, 21] } as const,
    ([severe, moderate, mild, normal, excess, first, second]) =>
      ladder(
        [
          below(severe, {
            id: 'deficit-severe',
            words: `In the source’s class of severe fat deficit (below ${severe} ${unit}).`,
          }),
          below(moderate, {
            id: 'deficit-moderate',
            words: `In the source’s class of moderate fat deficit (${severe} to below ${moderate} ${unit}).`,
          }),
          below(mild, {
            id: 'deficit-mild',
            words: `In the source’s class of mild fat deficit (${moderate} to below ${mild} ${unit}).`,
          }),
          upTo(normal, { id: 'normal', words: `In the source’s class named normal (${mild} to ${normal} ${unit}).` }),
          upTo(excess, {
            id: 'excess',
            words: `In the source’s class of excess fat (above ${normal} to ${excess} ${unit}).`,
          }),
          upTo(first, { id: 'obese-1', words: `In the source’s class obese I (above ${excess} to ${first} ${unit}).` }),
          upTo(second, {
            id: 'obese-2',
            words: `In the source’s class obese II (above ${first} to ${second} ${unit}).`,
          }),
        ],
        { id: 'obese-3', words: `In the source’s class obese III (above ${second} ${unit}).` },
      ),
  ),
  limits: { notInPregnancy: true },
  boundRule:
    'Lower limits up to and including the normal class belong to the class above, upper limits from there on to the class below.',
  citation: {
    id: 'kelly-2009',
    authors: ['Kelly'],
    andOthers: true,
    journal: 'PLoS ONE',
    year: 2009,
    volume: '4',
    pages: 'e7038',
    doi: '10.1371/journal.pone.0007038',
  },
  verification: 'from-memory',
  verificationNote: 'How the classes were made was read in the abstract; the limits are from memory.',
  cautions: [
    'DXA: bands from impedance differ and are never shown on the same chart without saying so.',
    'Matched to how common the BMI classes are in young US adults of 1999–2004.',
  ],
};
