import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { CoverageBy, CoverageRow } from '../../lib/cohort/types/comparability';
import type { Cohort } from '../../lib/cohort/types/cohort';
import type { CohortFilter } from '../../lib/cohort/types/filter';
import { openNodeEngine } from '../../lib/engine/node';
import type { Engine } from '../../lib/engine/types';
import type { RuleId } from '../../lib/measures/comparability-rule';
import { cohortOf, filterFor, reading } from './small-clinic';

let engine: Engine;
let cohort: Cohort;

const ROWS = [
  reading('a', '2025-01-06', { operator: 'ZZ', fasted_h: 12, sex: 'F' }),
  reading('a', '2025-01-06', { operator: 'ZZ', fasted_h: 5, weight_kg: '80.2', sex: 'F' }),
  reading('b', '2025-01-20', { operator: 'AB', fasted_h: '', rested: '', program: 'Diet' }),
  reading('c', '2025-02-03', { operator: '', fasted_h: '', rested: '' }),
  reading('d', '2025-02-10', { operator: 'AB', fasted_h: '', rested: '', site: '', posture: '' }),
  reading('d', '2025-03-10', { operator: 'AB', site: 'South', electrode_position: '' }),
];

beforeAll(async () => {
  engine = await openNodeEngine();
  cohort = await cohortOf(engine, ROWS, {
    procedures: [{ site: 'North', from: null, to: null, conditions: ['rested'], initials: 'AB' }],
  });
});
afterAll(() => engine.close());

const statesOf = (rows: readonly CoverageRow[], rule: RuleId): Readonly<Record<string, readonly number[]>> =>
  Object.fromEntries(
    rows
      .filter((row) => row.rule === rule)
      .map(({ group, met, notMet, byProcedure, unknown, notRecorded }) => [
        group ?? '(none)',
        [met, notMet, byProcedure, unknown, notRecorded],
      ]),
  );

const by = (group: CoverageBy, more: Partial<CohortFilter> = {}) => cohort.coverage(group, filterFor('ffm', more));

describe('the completeness of the record: met, not met, by procedure, unknown, not recorded', () => {
  test('by site: what a site records in no row of a month is not recorded there, what it records elsewhere is unknown', async () => {
    const rows = await by('site');
    expect(statesOf(rows, 'fasting')).toEqual({
      North: [1, 1, 0, 1, 1],
      South: [1, 0, 0, 0, 0],
      '(none)': [0, 0, 0, 0, 1],
    });
    expect(statesOf(rows, 'rested')).toEqual({
      North: [2, 0, 2, 0, 0],
      South: [1, 0, 0, 0, 0],
      '(none)': [0, 0, 0, 0, 1],
    });
    expect(statesOf(rows, 'posture')).toEqual({
      North: [4, 0, 0, 0, 0],
      South: [1, 0, 0, 0, 0],
      '(none)': [0, 0, 0, 0, 1],
    });
    expect(statesOf(rows, 'position')['South']).toEqual([0, 0, 0, 0, 1]);
  });

  test('by operator in the order of their names, whoever records more; rows without one come last', async () => {
    const rows = await by('operator');
    expect([...new Set(rows.map(({ group }) => group))]).toEqual(['AB', 'ZZ', null]);
    expect(statesOf(rows, 'fasting')).toEqual({ AB: [1, 0, 0, 1, 1], ZZ: [1, 1, 0, 0, 0], '(none)': [0, 0, 0, 0, 1] });
  });

  test('by month of the visits', async () => {
    const rows = await by('month');
    expect(statesOf(rows, 'fasting')).toEqual({
      '2025-01': [1, 1, 0, 1, 0],
      '2025-02': [0, 0, 0, 0, 2],
      '2025-03': [1, 0, 0, 0, 0],
    });
  });

  test('adds up to the readings for every rule, and to the counts over all sites', async () => {
    for (const group of ['site', 'operator', 'month'] as const) {
      const rows = await by(group);
      for (const row of rows) {
        expect(row.met + row.notMet + row.byProcedure + row.unknown + row.notRecorded).toBe(row.readings);
      }
      const fasting = rows.filter(({ rule }) => rule === 'fasting');
      expect(fasting.reduce((total, row) => total + row.readings, 0)).toBe(ROWS.length);
      const whole = cohort.summary.coverage.find(({ rule }) => rule === 'fasting');
      expect(whole).toMatchObject({
        recorded: fasting.reduce((total, { met, notMet }) => total + met + notMet, 0),
        unknown: fasting.reduce((total, { unknown }) => total + unknown, 0),
        notRecorded: fasting.reduce((total, { notRecorded }) => total + notRecorded, 0),
      });
    }
  });

  test('follows the filter: site, sex, age, and the people of a program', async () => {
    const readings = async (more: Partial<CohortFilter>) => {
      const rows = (await by('month', more)).filter(({ rule }) => rule === 'fasting');
      return rows.reduce((total, row) => total + row.readings, 0);
    };
    expect(await readings({ site: 'North' })).toBe(4);
    expect(await readings({ sex: 'F' })).toBe(2);
    expect(await readings({ program: 'Diet' })).toBe(1);
    expect(await readings({ ageFrom: 70 })).toBe(0);
  });
});
