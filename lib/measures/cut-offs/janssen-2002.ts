import type { CutOff } from './cut-off';
import { ADULTS, below, bySex, ladder, upTo } from './ladder';
import { BESIDE_STRENGTH } from './muscle-words';

/** Skeletal muscle as a share of weight, two classes; from memory. */
export const JANSSEN_2002: CutOff = {
  id: 'smm-percent-janssen-2002',
  version: 1,
  name: 'Janssen 2002, SMM/weight',
  quantity: 'smm_percent',
  methods: ['bia'],
  equationIds: ['smm-janssen-2000'],
  group: null,
  branches: bySex(ADULTS, { M: [31.5, 37], F: [22.1, 27.6] } as const, ([second, first]) =>
    ladder(
      [
        below(second, { id: 'class-2', words: `In class II of the source (below ${second} %).` }),
        upTo(first, { id: 'class-1', words: `In class I of the source (${second}–${first} %).` }),
      ],
      { id: 'above', words: `Above the classes of the source (${first} %).` },
    ),
  ),
  limits: { notInPregnancy: true },
  boundRule:
    'Printed as a closed range for class I: its upper end belongs to it. Later texts print < for the same value.',
  citation: {
    id: 'janssen-2002',
    authors: ['Janssen I'],
    andOthers: true,
    journal: 'J Am Geriatr Soc',
    year: 2002,
    volume: '50',
    pages: '889–896',
    fromMemory: ['journal', 'year', 'volume', 'pages'],
  },
  verification: 'from-memory',
  verificationNote: 'Values, bounds and the equation behind them are from memory.',
  cautions: [BESIDE_STRENGTH],
};
