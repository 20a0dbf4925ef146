import { DEFAULT_CATALOGUE } from '../../lib/measures/catalogue';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { settingsSchema } from '../../lib/cohort/settings';
import { createCohort } from '../../lib/cohort/create-cohort';
import type { IsoDate } from '../../lib/core/iso-date';
import { openNodeEngine } from '../../lib/engine/node';
import { openPostgresEngine } from '../../lib/engine/postgres';
import type { Engine, Row } from '../../lib/engine/types';
import type { ImportPlan } from '../../lib/import/plan';
import { answersOf, PURPOSES, rowCountsOf, tablesOf } from './answers-of';
import { compareAnswers } from './compare-answers';
import { copyReadings, demoSettings, importDemo } from './demo-clinic';
import {
  postgresAbsent,
  postgresInstalled,
  startTemporaryPostgres,
  type TemporaryPostgres,
} from './temporary-postgres';
import { openWasmEngine } from './wasm-engine';

/** A whole pipeline and all its answers, on a computer that has other work too. */
const LIMIT_MS = 240_000;

/** With an enrolment that the clinic entered, so that its table holds a row. */
const settings = settingsSchema.parse({
  ...demoSettings,
  enrolments: [{ client: 'OM-0031', program: 'Check-ups only', start: '2025-10-06' }],
});

interface Told {
  readonly counts: Readonly<Record<string, number>>;
  readonly tables: Readonly<Record<string, readonly Row[]>>;
  readonly answers: Readonly<Record<string, unknown>>;
}

const tell = async (engine: Engine, asOf: IsoDate): Promise<Told> => {
  const cohort = await createCohort(engine, settings, asOf);
  return { counts: await rowCountsOf(engine), tables: await tablesOf(engine), answers: await answersOf(cohort) };
};

const native: { engine?: Engine; plan?: ImportPlan; asOf: IsoDate; told?: Told } = { asOf: '2026-01-02' as IsoDate };
const cluster: { postgres?: TemporaryPostgres } = {};

const nativeEngine = (): Engine => {
  if (native.engine === undefined) throw new Error('the native engine is not open');
  return native.engine;
};

const sameTables = (tables: Told['tables'], counts: Told['counts']): void => {
  expect(counts).toEqual(native.told?.counts);
  for (const [table, rows] of Object.entries(native.told?.tables ?? {})) {
    const found = compareAnswers(rows, tables[table]);
    expect(found.differences, table).toEqual([]);
    expect(found.numbers + found.others, table).toBeGreaterThan(0);
  }
};

const same = (told: Told): void => {
  sameTables(told.tables, told.counts);
  for (const [question, answer] of Object.entries(native.told?.answers ?? {})) {
    const found = compareAnswers(answer, told.answers[question]);
    expect(found.differences, question).toEqual([]);
    expect(found.numbers, question).toBeGreaterThan(0);
  }
};

beforeAll(async () => {
  native.engine = await openNodeEngine();
  native.plan = await importDemo(native.engine);
  native.asOf = native.plan.lastVisit ?? native.asOf;
  native.told = await tell(native.engine, native.asOf);
  if (postgresInstalled) cluster.postgres = await startTemporaryPostgres();
}, LIMIT_MS);

afterAll(async () => {
  await native.engine?.close();
  await cluster.postgres?.stop();
});

describe('the pipeline on native DuckDB', () => {
  it('fills every table of the invented clinic', () => {
    for (const [table, count] of Object.entries(native.told?.counts ?? {})) expect(count, table).toBeGreaterThan(0);
  });

  it('answers with programs of every value, changes, contacts and vectors', () => {
    const { programs, changes, contacts, vectors } = native.told?.answers ?? {};
    const names = new Set((programs as { program: string }[]).map((row) => row.program));
    expect(programs).toHaveLength(names.size * DEFAULT_CATALOGUE.measures.length * PURPOSES.length);
    expect((changes as unknown[]).length).toBeGreaterThan(5_000);
    expect(contacts).toHaveProperty('talkTo.0');
    expect(contacts).toHaveProperty('measureAgain.0');
    expect(vectors).toHaveProperty('paired.0');
  });
});

describe('the pipeline on DuckDB-wasm', () => {
  it(
    'imports the same plan and gives the same answers',
    async () => {
      const engine = await openWasmEngine();
      try {
        expect(await importDemo(engine)).toEqual(native.plan);
        same(await tell(engine, native.asOf));
      } finally {
        await engine.close();
      }
    },
    LIMIT_MS,
  );

  it(
    'builds the same tables from readings copied row by row',
    async () => {
      const engine = await openWasmEngine();
      try {
        await copyReadings(nativeEngine(), engine);
        await createCohort(engine, settings, native.asOf);
        sameTables(await tablesOf(engine), await rowCountsOf(engine));
      } finally {
        await engine.close();
      }
    },
    LIMIT_MS,
  );
});

describe.skipIf(!postgresInstalled)(
  `the pipeline on PostgreSQL${postgresInstalled ? '' : ` (${postgresAbsent})`}`,
  () => {
    it(
      'gives the same answers from readings copied row by row',
      async () => {
        const engine = await openPostgresEngine(cluster.postgres?.connection ?? {});
        try {
          await copyReadings(nativeEngine(), engine);
          same(await tell(engine, native.asOf));
        } finally {
          await engine.close();
        }
      },
      LIMIT_MS,
    );
  },
);
