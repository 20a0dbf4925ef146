import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openNodeEngine } from '../../lib/engine/node';
import { openPostgresEngine } from '../../lib/engine/postgres';
import type { Engine } from '../../lib/engine/types';
import { DEFAULT_CATALOGUE } from '../../lib/measures/catalogue';
import { compileExpression } from '../../lib/measures/compile-sql';
import { evaluate } from '../../lib/measures/evaluate';
import { INPUT_IDS, type Inputs } from '../../lib/measures/input-id';
import {
  postgresAbsent,
  postgresInstalled,
  startTemporaryPostgres,
  type TemporaryPostgres,
} from './temporary-postgres';
import { openWasmEngine } from './wasm-engine';

const ROWS = 60;

const odd = fc.double({ min: -1e6, max: 1e6, noNaN: true }).filter((value) => Math.abs(value) > 1e-6);

/**
 * A missing value, a zero, a plausible recorded value, or something odd. No overflow, which PostgreSQL refuses, and no
 * negative zero, whose sign is lost on the way into a table.
 */
const cell = fc.oneof(
  { weight: 1, arbitrary: fc.constant(undefined) },
  { weight: 1, arbitrary: fc.constantFrom(0, 1) },
  { weight: 6, arbitrary: fc.integer({ min: 1, max: 9999 }).map((tenths) => tenths / 10) },
  {
    weight: 2,
    arbitrary: odd,
  },
);

const reading: fc.Arbitrary<Inputs> = fc
  .tuple(...INPUT_IDS.map(() => cell))
  .map((cells) =>
    Object.fromEntries(INPUT_IDS.flatMap((id, index) => (cells[index] === undefined ? [] : [[id, cells[index]]]))),
  );

const columns = DEFAULT_CATALOGUE.all
  .map((measure) => `${compileExpression(measure.formula)} AS ${measure.id}`)
  .join(', ');

const agree = async (engine: Engine, runs: number): Promise<number> => {
  let known = 0;
  await engine.run(
    `CREATE OR REPLACE TABLE inputs (row_no INTEGER, ${INPUT_IDS.map((id) => `${id} DOUBLE PRECISION`).join(', ')})`,
  );
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
        for (const { id, formula } of DEFAULT_CATALOGUE.all) {
          const [here, there] = [evaluate(formula, inputs), rows[index]?.[id] ?? undefined];
          if (here === undefined || there === undefined) {
            expect(there, id).toBe(here);
          } else {
            known += 1;
            expect(Math.abs(here - Number(there)), id).toBeLessThanOrEqual(1e-12 * Math.abs(here));
          }
        }
      });
    }),
    { seed: 20260102, numRuns: runs, endOnFailure: true },
  );
  return known;
};

const cluster: { postgres?: TemporaryPostgres } = {};

beforeAll(async () => {
  if (postgresInstalled) cluster.postgres = await startTemporaryPostgres();
});

afterAll(async () => {
  await cluster.postgres?.stop();
});

const onEngine = async (engine: Engine, runs: number): Promise<void> => {
  try {
    expect(await agree(engine, runs)).toBeGreaterThan(ROWS * runs * 3);
  } finally {
    await engine.close();
  }
};

describe('a formula in TypeScript and in SQL', () => {
  it('agree on native DuckDB for every value of the catalogue', async () => {
    await onEngine(await openNodeEngine(), 10);
  });

  it('agree on DuckDB-wasm', async () => {
    await onEngine(await openWasmEngine(), 5);
  });

  it.skipIf(!postgresInstalled)(`agree on PostgreSQL${postgresInstalled ? '' : ` (${postgresAbsent})`}`, async () => {
    await onEngine(await openPostgresEngine(cluster.postgres?.connection ?? {}), 10);
  });
});
