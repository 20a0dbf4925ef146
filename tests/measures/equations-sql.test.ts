import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openNodeEngine } from '../../lib/engine/node';
import type { Engine } from '../../lib/engine/types';
import { compileExpression } from '../../lib/measures/compile-sql';
import { equationExpression } from '../../lib/measures/equation';
import { PUBLISHED_EQUATIONS } from '../../lib/measures/equations/published-equations';
import { evaluate } from '../../lib/measures/evaluate';
import { INPUT_IDS, type Inputs } from '../../lib/measures/input-id';

const ROWS = 20;
const RUNS = 5;
const FORMULAS = PUBLISHED_EQUATIONS.map((equation, index) => ({
  id: equation.id,
  column: `equation_${String(index)}`,
  formula: equationExpression(equation),
}));

const tenths = (from: number, to: number): fc.Arbitrary<number | undefined> =>
  fc.oneof(
    { weight: 9, arbitrary: fc.integer({ min: from * 10, max: to * 10 }).map((value) => value / 10) },
    { weight: 1, arbitrary: fc.constantFrom(undefined, 0) },
  );

const reading: fc.Arbitrary<Inputs> = fc
  .record({
    weight_kg: tenths(20, 200),
    height_cm: tenths(90, 210),
    r_ohm: tenths(200, 900),
    xc_ohm: tenths(20, 100),
    // The edges of the age bands are wanted often.
    age_years: fc.oneof(tenths(0, 95), fc.constantFrom(3, 10, 18, 30, 60, 17.999, 29.999)),
    sex_male: fc.constantFrom(0, 1, undefined),
    ffm_kg: tenths(15, 110),
    fm_kg: tenths(2, 90),
  })
  .map((cells) => Object.fromEntries(Object.entries(cells).filter(([, value]) => value !== undefined)));

const opened: { engine?: Engine } = {};

beforeAll(async () => {
  opened.engine = await openNodeEngine();
});

afterAll(async () => {
  await opened.engine?.close();
});

describe('a published equation in TypeScript and in SQL', () => {
  it('agree on native DuckDB, and each equation is known in many rows', async () => {
    const { engine } = opened;
    if (engine === undefined) throw new Error('no engine');
    await engine.run(
      `CREATE TABLE inputs (row_no INTEGER, ${INPUT_IDS.map((id) => `${id} DOUBLE PRECISION`).join(', ')})`,
    );
    const known = new Map<string, number>();
    const columns = FORMULAS.map(({ column, formula }) => `${compileExpression(formula)} AS ${column}`).join(', ');
    await fc.assert(
      fc.asyncProperty(fc.array(reading, { minLength: ROWS, maxLength: ROWS }), async (readings) => {
        await engine.run('DELETE FROM inputs');
        await engine.insert(
          'inputs',
          ['row_no', ...INPUT_IDS],
          readings.map((inputs, index) => [index, ...INPUT_IDS.map((id) => inputs[id] ?? null)]),
        );
        const rows = await engine.query(`SELECT ${columns} FROM inputs ORDER BY row_no`);
        expect(rows).toHaveLength(ROWS);
        readings.forEach((inputs, index) => {
          for (const { id, column, formula } of FORMULAS) {
            const here = evaluate(formula, inputs);
            const there = rows[index]?.[column] ?? undefined;
            if (here === undefined || there === undefined) {
              expect(there, id).toBe(here);
            } else {
              known.set(id, (known.get(id) ?? 0) + 1);
              expect(Math.abs(here - Number(there)), id).toBeLessThanOrEqual(1e-12 * Math.max(1, Math.abs(here)));
            }
          }
        });
      }),
      { seed: 20260303, numRuns: RUNS, endOnFailure: true },
    );
    for (const { id } of FORMULAS) expect(known.get(id) ?? 0, id).toBeGreaterThan((ROWS * RUNS) / 4);
  });
});
