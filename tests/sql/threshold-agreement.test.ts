import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { beyond } from '../../lib/cohort/sql/change-sql';
import { openNodeEngine } from '../../lib/engine/node';
import { openPostgresEngine } from '../../lib/engine/postgres';
import type { Engine, Row } from '../../lib/engine/types';
import { beyondThreshold } from '../../lib/stats/beyond-threshold';
import {
  postgresAbsent,
  postgresInstalled,
  startTemporaryPostgres,
  type TemporaryPostgres,
} from './temporary-postgres';
import { openWasmEngine } from './wasm-engine';

const CODE = { up: 1, down: -1, within: 0 } as const;
const COLUMNS = ['row_no', 'earlier', 'later', 'threshold'] as const;

interface Case {
  readonly earlier: number;
  readonly later: number;
  readonly threshold: number;
}

/** Two values recorded with one decimal, and a threshold that their difference equals exactly in tenths. */
const atThreshold: fc.Arbitrary<Case> = fc
  .tuple(fc.integer({ min: 0, max: 9999 }), fc.integer({ min: 0, max: 9999 }))
  .map(([a, b]) => ({ earlier: a / 10, later: b / 10, threshold: Math.abs(a - b) / 10 }));

const nearby: fc.Arbitrary<Case> = fc
  .tuple(atThreshold, fc.constantFrom(-1e-3, -1e-6, -1e-8, -2e-9, -5e-10, 1e-12, 5e-10, 2e-9, 1e-8, 1e-6, 1e-3))
  .map(([exact, share]) => ({ ...exact, threshold: exact.threshold * (1 + share) }));

/** PostgreSQL refuses products below 1e-307 where DuckDB rounds them to zero. */
const representable = (value: number): boolean => value === 0 || Math.abs(value) > 1e-100;

const anywhere: fc.Arbitrary<Case> = fc.record({
  earlier: fc.double({ min: -1e6, max: 1e6, noNaN: true }).filter(representable),
  later: fc.double({ min: -1e6, max: 1e6, noNaN: true }).filter(representable),
  threshold: fc.double({ min: 0, max: 1e6, noNaN: true }).filter(representable),
});

const cases = fc.sample(fc.oneof(atThreshold, nearby, anywhere), { seed: 20260102, numRuns: 800 });

/** Direction of every case beside the case as the engine holds it: DuckDB-wasm binds a double to within two ulps. */
const directions = async (
  engine: Engine,
  given: readonly Case[],
): Promise<{ readonly held: readonly Case[]; readonly found: readonly unknown[] }> => {
  await engine.run(
    'CREATE OR REPLACE TABLE cases (row_no INTEGER, earlier DOUBLE PRECISION, later DOUBLE PRECISION, threshold DOUBLE PRECISION)',
  );
  await engine.insert(
    'cases',
    COLUMNS,
    given.map((one, index) => [index, one.earlier, one.later, one.threshold]),
  );
  const rows = await engine.query(
    `SELECT earlier, later, threshold, ${beyond('earlier', 'later', 'threshold')} AS direction FROM cases ORDER BY row_no`,
  );
  const number = (row: Row, name: string): number => Number(row[name]);
  return {
    held: rows.map((row) => ({
      earlier: number(row, 'earlier'),
      later: number(row, 'later'),
      threshold: number(row, 'threshold'),
    })),
    found: rows.map((row) => row['direction']),
  };
};

const expected = (one: Case): number => CODE[beyondThreshold(one.earlier, one.later, one.threshold)];

const cluster: { postgres?: TemporaryPostgres } = {};

beforeAll(async () => {
  if (postgresInstalled) cluster.postgres = await startTemporaryPostgres();
});

afterAll(async () => {
  await cluster.postgres?.stop();
});

const onEngine = async (engine: Engine): Promise<void> => {
  try {
    const { held, found } = await directions(engine, cases);
    expect(found).toEqual(held.map(expected));
    held.forEach((one, index) => {
      const { threshold } = cases[index] ?? { threshold: Number.NaN };
      expect(Math.abs(one.threshold - threshold)).toBeLessThanOrEqual(4 * Number.EPSILON * threshold);
    });
  } finally {
    await engine.close();
  }
};

describe('up, down and within in TypeScript and in SQL', () => {
  it('are each met by the cases', () => {
    const met = cases.map(expected);
    for (const code of Object.values(CODE)) expect(met.filter((one) => one === code).length).toBeGreaterThan(80);
  });

  it('agree on native DuckDB', async () => {
    await onEngine(await openNodeEngine());
  });

  it('agree on DuckDB-wasm', async () => {
    await onEngine(await openWasmEngine());
  });

  it.skipIf(!postgresInstalled)(`agree on PostgreSQL${postgresInstalled ? '' : ` (${postgresAbsent})`}`, async () => {
    await onEngine(await openPostgresEngine(cluster.postgres?.connection ?? {}));
  });

  it('count a one-decimal difference that equals the threshold as beyond it, whatever binary rounding does', async () => {
    const exact = fc
      .sample(atThreshold, { seed: 7, numRuns: 1000 })
      .filter((one) => one.earlier !== one.later)
      .concat([{ earlier: 70.1, later: 68.3, threshold: 1.8 }]);
    const rounded = exact.filter((one) => Math.abs(one.later - one.earlier) < one.threshold);
    expect(rounded.length).toBeGreaterThan(100);
    const engine = await openNodeEngine();
    try {
      const { found } = await directions(engine, exact);
      expect(found).toEqual(exact.map((one) => (one.later > one.earlier ? 1 : -1)));
    } finally {
      await engine.close();
    }
  });

  it('count no difference as within, even at a threshold of zero', async () => {
    const engine = await openNodeEngine();
    try {
      const still: readonly Case[] = [
        { earlier: 70.1, later: 70.1, threshold: 0 },
        { earlier: 0, later: 0, threshold: 0 },
      ];
      expect((await directions(engine, still)).found).toEqual([0, 0]);
      expect(still.map(expected)).toEqual([0, 0]);
    } finally {
      await engine.close();
    }
  });
});
