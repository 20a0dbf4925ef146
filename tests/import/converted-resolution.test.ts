import { expect, test } from 'vitest';
import { canonicalMapping } from '../../lib/import/canonical-mapping';
import { commitReadings } from '../../lib/import/commit-readings';
import { createRowMapper } from '../../lib/import/row-mapper';
import { inputsOfFiles, PLAIN, useEngine } from './judged';

const engine = useEngine();

const stepsOf = async (...contents: readonly string[]): Promise<Readonly<Record<string, number>>> => {
  const files = contents.map((content, index) => ({ name: `${String(index)}.csv`, content }));
  const { inputs, failedFiles } = await inputsOfFiles(files);
  expect(failedFiles).toEqual([]);
  const plan = await commitReadings(engine(), inputs, PLAIN);
  expect(plan.ok).toBe(true);
  const rows = await engine().query('SELECT column_name, decimals FROM column_resolution WHERE decimals IS NOT NULL');
  return Object.fromEntries(rows.map((row) => [String(row['column_name']), 10 ** -Number(row['decimals'])]));
};

const inPounds = (weights: readonly string[]): string =>
  [
    'Patient ID,Visit date,Weight (lb),R,Xc',
    ...weights.map((lb, n) => `P-${String(n)},2025-03-04,${lb},50${String(n)},50.5`),
  ].join('\n');

// International yard and pound agreement, 1959: a pound is 0.45359237 kg.
const POUND = 0.45359237;

test('a converted column is known to the step of its source, not to the decimals of the product', async () => {
  const steps = await stepsOf(inPounds(['150', '161']));
  expect(steps['weight_kg']).toBeCloseTo(POUND, 10);
  expect(steps['xc_ohm']).toBeCloseTo(0.1, 10);
  expect((await stepsOf(inPounds(['150.2', '161'])))['weight_kg']).toBeCloseTo(POUND / 10, 10);
});

test('the finest of several files counts, each by its own unit', async () => {
  const kilograms = 'Patient ID,Visit date,Weight (kg)\nP-9,2025-03-04,70.5';
  expect((await stepsOf(inPounds(['150']), kilograms))['weight_kg']).toBeCloseTo(0.1, 10);
});

test('a single cell in pounds does not make a column of kilograms finer than it is', async () => {
  const mixed = 'Patient ID,Visit date,Weight (kg)\nP-1,2025-03-04,70.5\nP-2,2025-03-04,160 lb';
  expect((await stepsOf(mixed))['weight_kg']).toBeCloseTo(0.1, 10);
});

test('a column under its canonical heading whose unit a person changed is known to the step of that unit', () => {
  const canonical = canonicalMapping(['client_id', 'visit_date', 'weight_kg']);
  const columns = canonical.columns.map((column) =>
    column.to === 'weight_kg' ? { ...column, unit: 'lb' as const } : column,
  );
  const mapper = createRowMapper({ ...canonical, columns });
  const [row] = mapper.map({ line: 2, cells: ['P-1', '2025-03-04', '150'] });
  expect(row?.cells).toContain('68.0388555');
  expect(mapper.resolutions()).toEqual([{ column: 'weight_kg', step: POUND }]);
});
