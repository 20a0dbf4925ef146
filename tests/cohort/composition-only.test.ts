import { afterAll, beforeAll, expect, test } from 'vitest';
import { openNodeEngine } from '../../lib/engine/node';
import type { Engine } from '../../lib/engine/types';
import type { Cohort } from '../../lib/cohort/types/cohort';
import { cohortOf, errorStudy, filterFor, latestOf, precisionOf, reading, without, type Cells } from './small-clinic';

let engine: Engine;
let cohort: Cohort;

const composition = (row: Cells, cells: Cells): Cells => ({ ...without(row, 'r_ohm', 'xc_ohm'), ...cells });

beforeAll(async () => {
  engine = await openNodeEngine();
  const study = errorStudy(30, (person, visit) => ({
    ffm_kg: visit === 0 ? '60.0' : person % 2 === 0 ? '60.8' : '59.2',
  })).map((row) => without(row, 'r_ohm', 'xc_ohm'));
  cohort = await cohortOf(engine, [
    ...study,
    composition(reading('a', '2025-01-06'), { ffm_kg: '60.0', fm_kg: '20.0' }),
    composition(reading('a', '2025-06-06'), { ffm_kg: '57.0', fm_kg: '20.5' }),
  ]);
});
afterAll(() => engine.close());

test('files without R and Xc go the whole way on the exported values', async () => {
  expect(precisionOf(cohort, 'ffm_exported')).toMatchObject({ tier: 1, dfBetween: 30 });
  // z(0.975)·√(2·0.8²/2), NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.1.
  expect(await latestOf(cohort, 'a', 'ffm_exported')).toMatchObject({ change: -3, result: 'down', tier: 1 });
  expect((await latestOf(cohort, 'a', 'ffm_exported')).lsc).toBeCloseTo(1.959963984540054 * 0.8, 9);
  expect((await latestOf(cohort, 'a', 'fm_exported')).result).toBe('no-threshold');
  expect(await latestOf(cohort, 'a', 'weight')).toMatchObject({ change: 0 });
});

test('what needs R or Xc holds nothing, and fails nowhere', async () => {
  for (const measure of ['r', 'ffm', 'phase_angle', 'smm'] as const) {
    expect(await cohort.changes(filterFor(measure), 'baseline-latest')).toEqual([]);
    expect(precisionOf(cohort, measure)).toMatchObject({ tier: 6, why: 'not-measured' });
  }
  expect((await cohort.vectors(filterFor('ffm'))).groups).toEqual([]);
  expect(await cohort.indices(filterFor('ffmi'))).toEqual([]);
});
