import { describe, expect, test } from 'vitest';
import { NO_ANSWERS, type ImportAnswers } from '../../lib/import/import-input';
import { csv, planOf, ROW, useEngine } from './judged';

const engine = useEngine();

type Cells = Readonly<Record<string, string>>;

const visit = (client: string, day: number, cells: Cells = {}): Cells => ({
  ...ROW,
  client_id: client,
  visit_date: `2025-03-${String(day).padStart(2, '0')}`,
  ...cells,
});

const asked = async (rows: readonly Cells[], answers: Partial<ImportAnswers> = {}) => {
  const plan = await planOf(engine(), csv(rows), { answers: { ...NO_ANSWERS, ...answers } });
  expect(plan.accepted).toBe(rows.length);
  return plan.people;
};

const PERSON = { family_name: 'Orla', given_name: 'Fenn', birth_date: '1960-01-01' };

const ROWS = [
  // Spellings of one id; the last is another.
  visit('OM-0082', 1),
  visit('OM-0082', 2),
  visit('om 82', 3),
  visit('OM.082', 4),
  visit('OM-0820', 1),
  // Another person's id, the same name and birth.
  visit('A', 1, PERSON),
  visit('B', 2, { ...PERSON, family_name: 'ORLA' }),
  visit('C', 3, { ...PERSON, birth_date: '1960-01-02' }),
  // Two birth dates.
  visit('D', 1, { birth_date: '1959-02-09' }),
  visit('D', 2, { birth_date: '1959-02-09' }),
  visit('D', 3, { birth_date: '1959-09-02' }),
  // Two sexes for the equations; F and X are one coding.
  visit('E', 1, { sex: 'F' }),
  visit('E', 2, { sex: 'M' }),
  visit('F', 1, { sex: 'F' }),
  visit('F', 2, { sex: 'X' }),
  // Heights: 1.5 cm off the median is said nothing of, more is asked; of children and of reported heights nothing.
  visit('G', 1, { height_cm: '170.0' }),
  visit('G', 2, { height_cm: '170.0' }),
  visit('G', 3, { height_cm: '171.5' }),
  visit('H', 1, { height_cm: '170.0' }),
  visit('H', 2, { height_cm: '170.0' }),
  visit('H', 3, { height_cm: '171.6' }),
  visit('I', 1, { height_cm: '150.0', birth_date: '2012-01-01' }),
  visit('I', 2, { height_cm: '155.0', birth_date: '2012-01-01' }),
  visit('J', 1, { height_cm: '170.0' }),
  visit('J', 2, { height_cm: '180.0', height_source: 'reported' }),
];

const SPELLINGS = {
  kind: 'similar-ids',
  why: 'spelling',
  ids: [
    { id: 'OM-0082', visits: 2 },
    { id: 'OM.082', visits: 1 },
    { id: 'om 82', visits: 1 },
  ],
};
const NAMES = {
  kind: 'similar-ids',
  why: 'name-and-birth',
  ids: [
    { id: 'A', visits: 1 },
    { id: 'B', visits: 1 },
  ],
};
const BIRTHS = {
  kind: 'birth-dates',
  client: 'D',
  dates: [
    { date: '1959-02-09', visits: 2 },
    { date: '1959-09-02', visits: 1 },
  ],
};
const SEXES = {
  kind: 'sexes',
  client: 'E',
  sexes: [
    { sex: 'F', visits: 1 },
    { sex: 'M', visits: 1 },
  ],
};
const HEIGHTS = {
  kind: 'heights',
  client: 'H',
  medianCm: 170,
  heights: [
    { cm: 170, visits: 2, firstDate: '2025-03-01' },
    { cm: 171.6, visits: 1, firstDate: '2025-03-03' },
  ],
};

describe('what only a person can say about somebody', () => {
  test('is asked, and nothing else', async () => {
    expect(await asked(ROWS)).toEqual([SPELLINGS, NAMES, BIRTHS, SEXES, HEIGHTS]);
  });

  test('is not asked again once it is answered', async () => {
    expect(
      await asked(ROWS, {
        differentClients: [['OM-0082', 'om 82', 'OM.082', 'OM-0820']],
        aliases: [{ id: 'B', client: 'A' }],
        birthDates: ['D'],
        sexes: ['E'],
        heights: ['H'],
      }),
    ).toEqual([]);
  });

  test('is asked again where a further spelling comes', async () => {
    const different = { differentClients: [['OM-0082', 'om 82', 'OM.082']] };
    expect((await asked([...ROWS, visit('OM0082', 9)], different))[0]).toMatchObject({
      why: 'spelling',
      ids: [{ id: 'OM-0082' }, { id: 'OM.082' }, { id: 'OM0082' }, { id: 'om 82' }],
    });
  });

  test('about an id that was made one with another is asked of both together', async () => {
    const people = await asked([visit('K', 1, { sex: 'F' }), visit('k-old', 2, { sex: 'M' })], {
      aliases: [{ id: 'k-old', client: 'K' }],
    });
    expect(people).toMatchObject([{ kind: 'sexes', client: 'K' }]);
  });
});
