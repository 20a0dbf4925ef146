import { describe, expect, test } from 'vitest';
import { declareProcedure, denyProcedure } from '../../lib/workspace/procedure-answers';
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
    ({ site, from, to, visits, columns, declaredBy }) => [site, from, to, visits, columns.length, declaredBy],
  );

const NOTHING = CONDITION_COLUMNS.length;

describe('conditions that a site does not record', () => {
  test('are listed per site and run of months, where no row of the month has them', async () => {
    expect(await missing()).toEqual([
      [null, '2025-01-08', '2025-01-08', 1, NOTHING, null],
      ['North', '2025-01-06', '2025-03-31', 4, NOTHING, null],
      ['North', '2025-05-05', '2025-05-05', 1, 1, null],
      ['North', '2025-06-02', '2025-06-02', 1, NOTHING, null],
    ]);
  });

  test('are left out of a written procedure that covers the days, and not listed where it stands for them or where there is none by answer', async () => {
    const settings = settingsSchema.parse({
      procedures: [
        { site: 'North', from: '2025-01-01', to: '2025-03-31', conditions: ['fasting', 'contact'], initials: 'AB' },
        { site: null, from: '2025-05-01', to: null, conditions: ['fasting'], initials: 'AB' },
      ],
      withoutProcedure: [{ site: null }],
    });
    expect(await missing(importAnswers(settings))).toEqual([
      ['North', '2025-01-06', '2025-03-31', 4, NOTHING - 2, 0],
      ['North', '2025-06-02', '2025-06-02', 1, NOTHING - 1, 1],
    ]);
  });

  test('of a month that a procedure covers in part are asked for the other days, and an answer for those is enough', async () => {
    const declared = declareProcedure(settingsSchema.parse({ withoutProcedure: [{ site: 'North' }, { site: null }] }), {
      site: 'North',
      from: '2025-02-05',
      to: '2025-06-30',
      conditions: ['fasting'],
      initials: 'AB',
    });
    expect(declared.withoutProcedure).toEqual([{ site: null, from: null, to: null }]);
    const leftOut = [
      ['North', '2025-02-10', '2025-03-31', 2, NOTHING - 1, 0],
      ['North', '2025-06-02', '2025-06-02', 1, NOTHING - 1, 0],
    ];
    expect(await missing(importAnswers(declared))).toEqual([
      ['North', '2025-01-06', '2025-02-03', 2, NOTHING, null],
      ...leftOut,
    ]);
    const asked = { site: 'North', from: '2025-01-06', to: '2025-02-03' };
    const answered = denyProcedure(declared, asked);
    expect(answered.withoutProcedure.at(-1)).toEqual(asked);
    expect(await missing(importAnswers(answered))).toEqual(leftOut);
  });

  test('of a file are named with it where every row is empty', async () => {
    const plan = await planOf(engine(), csv([at('2025-01-06', 'North', { rested: 'y' })]));
    expect(plan.files[0]?.missingConditions).toEqual(CONDITION_COLUMNS.filter((name) => name !== 'rested'));
  });
});
