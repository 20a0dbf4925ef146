import type { CutOff } from './cut-off';
import { ADULTS, below, bySex, ladder } from './ladder';

const shared = {
  version: 1,
  quantity: 'waist',
  methods: ['tape'],
  limits: { notInPregnancy: true },
  cautions: ['The place of the tape (rib and hip bone, or navel) moves the result: it must be the same at each visit.'],
} as const;

/** Increased and substantially increased risk, World Health Organization. */
export const WAIST_WHO: CutOff = {
  ...shared,
  id: 'waist-who',
  name: 'WHO, waist',
  group: 'people of European descent',
  branches: bySex(ADULTS, { M: [94, 102], F: [80, 88] } as const, ([increased, substantial]) =>
    ladder(
      [
        below(increased, { id: 'below', words: `Below the waist that WHO links to increased risk (${increased} cm).` }),
        below(substantial, {
          id: 'increased',
          words: `At a waist that WHO links to increased risk (from ${increased} cm).`,
        }),
      ],
      {
        id: 'substantial',
        words: `At a waist that WHO links to substantially increased risk (from ${substantial} cm).`,
      },
    ),
  ),
  boundRule: 'The summary that was read prints ≥; some tables print >.',
  citation: {
    id: 'joint-interim-statement-2009',
    authors: ['International Diabetes Federation'],
    andOthers: true,
    title: 'Joint interim statement, with the thresholds of the World Health Organization',
    journal: 'Circulation',
    year: 2009,
    volume: '120',
    pages: '1640–1645',
  },
  verification: 'read-in-secondary-text',
  verificationNote: 'The four limits were read in a summary of the statement.',
};

const idf = (
  id: string,
  group: string,
  limits: Readonly<Record<'F' | 'M', number>>,
  verified: Pick<CutOff, 'verification' | 'verificationNote'> = {
    verification: 'read-in-secondary-text',
    verificationNote: 'The limits were read in three tables; that the limit itself counts is from memory.',
  },
): CutOff => ({
  ...shared,
  ...verified,
  id,
  name: `IDF, waist: ${group}`,
  group,
  branches: bySex(ADULTS, limits, (limit) =>
    ladder([below(limit, { id: 'below', words: `Below the waist that IDF gives for this group (${limit} cm).` })], {
      id: 'from',
      words: `At or above the waist that IDF gives for this group (${limit} cm).`,
    }),
  ),
  boundRule: 'One table prints >, the others ≥: ≥ is used.',
  citation: {
    id: 'idf-2006',
    authors: ['International Diabetes Federation'],
    publisher: 'International Diabetes Federation',
    year: 2006,
    fromMemory: ['year'],
  },
});

/** Central waist by group, International Diabetes Federation. */
export const WAIST_IDF: readonly CutOff[] = [
  idf(
    'waist-idf-european',
    'European; until own data exist also Sub-Saharan African, Eastern Mediterranean and Middle Eastern',
    { M: 94, F: 80 },
  ),
  idf('waist-idf-south-asian', 'South and South-East Asian; until own data exist also South and Central American', {
    M: 90,
    F: 80,
  }),
  idf('waist-idf-chinese', 'Chinese', { M: 90, F: 80 }),
  idf('waist-idf-japanese-2006', 'Japanese, text of 2005/06', { M: 85, F: 90 }),
  idf(
    'waist-idf-japanese-later',
    'Japanese, later texts',
    { M: 90, F: 80 },
    {
      verification: 'from-memory',
      verificationNote: 'From memory; the text of 2005/06 that was read says 85 and 90 cm.',
    },
  ),
];
