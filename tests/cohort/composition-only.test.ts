import { afterAll, beforeAll, describe, expect, test } from 'vitest';
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

describe('exported composition without a height', () => {
  const study = errorStudy(30, (person, visit) => ({
    ffm_kg: visit === 0 ? '60.0' : person % 2 === 0 ? '60.8' : '59.2',
  }));
  const person = [
    composition(reading('a', '2025-01-06'), { ffm_kg: '60.0' }),
    composition(reading('a', '2025-06-06'), { ffm_kg: '57.0' }),
  ];
  const bare = (rows: readonly Cells[]) => rows.map((row) => without(row, 'r_ohm', 'xc_ohm', 'height_cm'));

  test('that nobody has in these data is judged, and the missing check is a note', async () => {
    const heightless = await cohortOf(engine, bare([...study, ...person]));
    expect(heightless.summary.knowsBmi).toBe(false);
    const change = await latestOf(heightless, 'a', 'ffm_exported');
    expect(change).toMatchObject({ change: -3, result: 'down', guard: 'note' });
    expect(change.reasons).toContain('bmi_not_recorded');
    const [walking] = await heightless.programs(filterFor('ffm_exported', { program: 'Walking' }), 'baseline-latest');
    expect(walking).toMatchObject({ down: 1, held: 0, nComparable: 1 });
  });

  test('that others have is held: there the height can be measured', async () => {
    const measured = composition(reading('b', '2025-01-06'), { ffm_kg: '55.0' });
    const some = await cohortOf(engine, [...bare([...study, ...person]), measured]);
    expect(some.summary.knowsBmi).toBe(true);
    const change = await latestOf(some, 'a', 'ffm_exported');
    expect(change).toMatchObject({ result: null, guard: 'hold' });
    expect(change.reasons).toContain('bmi_unknown');
  });

  test('leaves what an equation computes held: without a weight, muscle by Janssen is not judged', async () => {
    const weightless = await cohortOf(
      engine,
      [reading('a', '2025-01-06'), reading('a', '2025-06-06')].map((row) => without(row, 'weight_kg')),
    );
    expect(weightless.summary.knowsBmi).toBe(false);
    expect(await latestOf(weightless, 'a', 'smm')).toMatchObject({ result: null, guard: 'hold' });
  });
});
