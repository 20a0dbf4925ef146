import type { CutOff } from './cut-off';
import { bySex, ladder, upTo } from './ladder';
import { BESIDE_STRENGTH } from './muscle-words';

/** Skeletal muscle index and the odds of physical disability; only with the equation that it was made with. */
export const JANSSEN_2004: CutOff = {
  id: 'smi-janssen-2004',
  version: 1,
  name: 'Janssen 2004, SMM/H²',
  quantity: 'smi',
  methods: ['bia'],
  equationIds: ['smm-janssen-2000'],
  group: null,
  branches: bySex({ ageFrom: 60 }, { M: [8.5, 10.75], F: [5.75, 6.75] } as const, ([high, moderate]) =>
    ladder(
      [
        upTo(high, {
          id: 'high',
          words: `In the range with the highest odds of physical disability in the study (at ${high} kg/m² or below).`,
        }),
        upTo(moderate, {
          id: 'moderate',
          words: `In the range with moderate odds of physical disability in the study (above ${high} to ${moderate} kg/m²).`,
        }),
      ],
      {
        id: 'low',
        words: `In the range with the lowest odds of physical disability in the study (above ${moderate} kg/m²).`,
      },
    ),
  ),
  limits: { notInPregnancy: true },
  boundRule:
    'Printed with two decimals (men 8.50, 8.51–10.75, 10.76): a value between two printed ones, such as 8.505, belongs to the upper range.',
  citation: {
    id: 'janssen-2004',
    authors: ['Janssen I'],
    andOthers: true,
    journal: 'Am J Epidemiol',
    year: 2004,
    volume: '159',
    pages: '413–421',
    doi: '10.1093/aje/kwh058',
  },
  verification: 'read-in-abstract',
  verificationNote: 'Every value was read in the abstract: 4,449 people aged 60 years and more, muscle from impedance.',
  cautions: [
    BESIDE_STRENGTH,
    'Odds of disability against the lowest range: women 1.41 (0.97–2.04) and 3.31 (1.91–5.73), men 3.65 (1.92–6.94) and 4.71 (2.28–9.74).',
  ],
};
