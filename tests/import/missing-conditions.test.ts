import { describe, expect, test } from 'vitest';
import { settingsSchema } from '../../lib/cohort/settings';
import { CONDITION_COLUMNS } from '../../lib/import/columns';
import { NO_ANSWERS, type ImportAnswers } from '../../lib/import/import-input';
import { importAnswers } from '../../lib/workspace/import-answers';
import { csv, planOf, ROW, useEngine } from './judged';

const engine = useEngine();

const at = (date: string, site: string, cells: Readonly<Record<string, string>> = {}) => ({
  ...ROW,
  visit_date: date,
  site,
  ...cells,
});
const ALL = Object.fromEntries(
  CONDITION_COLUMNS.map((name) => [name, name.endsWith('_h') ? '24' : name === 'large_drink' ? 'n' : 'y']),
);
const withoutFasting = Object.fromEntries(Object.entries(ALL).filter(([name]) => name !== 'fasted_h'));

const ROWS = [
  // North records nothing from January to March, all in April, all but fasting in May.
  at('2025-01-06', 'North'),
  at('2025-02-03', 'North'),
  at('2025-02-10', 'North'),
  at('2025-03-31', 'North'),
  at('2025-04-07', 'North', ALL),
  at('2025-04-08', 'North'),
  at('2025-05-05', 'North', withoutFasting),
  at('2025-06-02', 'North'),
  at('2025-01-07', 'South', ALL),
  at('2025-01-08', ''),
];

const missing = async (answers: Partial<ImportAnswers> = {}) =>
  (await planOf(engine(), csv(ROWS), { answers: { ...NO_ANSWERS, ...answers } })).missingConditions.map(
    ({ site, from, to, visits, columns }) => [site, from, to, visits, columns.length],
  );

const NOTHING = CONDITION_COLUMNS.length;

describe('conditions that a site does not record', () => {
  test('are listed per site and run of months, where no row of the month has them', async () => {
    expect(await missing()).toEqual([
      [null, '2025-01-08', '2025-01-08', 1, NOTHING],
      ['North', '2025-01-06', '2025-03-31', 4, NOTHING],
      ['North', '2025-05-05', '2025-05-05', 1, 1],
      ['North', '2025-06-02', '2025-06-02', 1, NOTHING],
    ]);
  });

  test('are not listed where a written procedure stands for them, or where there is none by answer', async () => {
    const settings = settingsSchema.parse({
      procedures: [
        { site: 'North', from: '2025-01-01', to: '2025-03-31', conditions: ['fasting', 'contact'], initials: 'AB' },
        { site: null, from: '2025-05-01', to: null, conditions: ['fasting'], initials: 'AB' },
      ],
      withoutProcedure: [{ site: null }],
    });
    expect(await missing(importAnswers(settings))).toEqual([
      ['North', '2025-01-06', '2025-03-31', 4, NOTHING - 2],
      ['North', '2025-06-02', '2025-06-02', 1, NOTHING - 1],
    ]);
  });

  test('of a file are named with it where every row is empty', async () => {
    const plan = await planOf(engine(), csv([at('2025-01-06', 'North', { rested: 'y' })]));
    expect(plan.files[0]?.missingConditions).toEqual(CONDITION_COLUMNS.filter((name) => name !== 'rested'));
  });
});
