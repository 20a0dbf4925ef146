import { at, type PlantedClient } from './planted-client';

const LONG_FAMILY_NAME = 'Marodelund'.repeat(12);
const IMAGE_NAME = '<img src=x onerror=alert(1)>';
const RIGHT_TO_LEFT_NOTE = '\u202eשלום עולם مرحبا\u202c (right to left)';
const FORMULA_NOTE = '=HYPERLINK("https://example.invalid/","open")';

/** How the second person-like spelling of OM-0171 reads. */
export const SECOND_SPELLING_0171 = 'om 0171';

/** Planted clients whose text decides, not their change. */
export const PLANTED_TEXT: readonly PlantedClient[] = [
  {
    id: 'OM-0171',
    program: 'Check-ups only',
    sex: 'F',
    birth: '1969-03-12',
    heightCm: 164.0,
    story: 'one person under two spellings of the id',
    expected: 'asked, decision kept',
    exportOffsetKg: 0.3,
    body: 'as read',
    readings: [
      at('2024-11-04', 560, 52, 66),
      at('2025-02-03', 562, 52, 66.2, { client_id: SECOND_SPELLING_0171 }),
      at('2025-05-05', 559, 52.2, 66.1),
      at('2025-08-04', 561, 52.1, 66.4, { client_id: SECOND_SPELLING_0171 }),
      at('2025-11-03', 563, 52.1, 66.3),
    ],
  },
  {
    id: 'OM-0188',
    program: 'Check-ups only',
    sex: 'M',
    birth: '1974-01-22',
    heightCm: 181.0,
    story: 'hostile text: markup as a name, a family name of 120 letters, right-to-left text, a formula',
    expected: 'shown as text, layout holds',
    exportOffsetKg: -0.5,
    body: 'as read',
    readings: [
      at('2025-03-10', 480, 52, 84, { note: RIGHT_TO_LEFT_NOTE }),
      at('2025-06-10', 482, 52, 84.3, { note: FORMULA_NOTE }),
      at('2025-12-10', 481, 52.1, 84.1),
    ].map((reading) => ({
      ...reading,
      cells: { ...reading.cells, family_name: LONG_FAMILY_NAME, given_name: IMAGE_NAME },
    })),
  },
];
