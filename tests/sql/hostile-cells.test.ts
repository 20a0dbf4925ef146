import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { createCohort } from '../../lib/cohort/create-cohort';
import type { Cohort } from '../../lib/cohort/types/cohort';
import { openNodeEngine } from '../../lib/engine/node';
import { openPostgresEngine } from '../../lib/engine/postgres';
import type { Engine } from '../../lib/engine/types';
import { filterOf } from './answers-of';
import { copyReadings, demoSettings, importBytes } from './demo-clinic';
import {
  postgresAbsent,
  postgresInstalled,
  startTemporaryPostgres,
  type TemporaryPostgres,
} from './temporary-postgres';
import { openWasmEngine } from './wasm-engine';

const WITH_NUL = 'a\u0000b';

const HOSTILE: readonly string[] = [
  "'; DROP TABLE readings; --",
  "' OR '1'='1",
  '"; DELETE FROM visits; --',
  "\\'; DROP TABLE visits; --",
  '/* */ UNION SELECT 1',
  '$1 ? :name {x} [y] %s',
  'Ærø 体 🜁 abc e\u0301',
  '=1+1|cmd',
  'NULL; --',
  `long ${"'x".repeat(5000)}`,
];

const quoted = (cell: string): string => `"${cell.replaceAll('"', '""')}"`;

const HEADER =
  'client_id,family_name,birth_date,sex,program,program_start,site,device_id,operator,note,visit_date,height_cm,weight_kg,r_ohm,xc_ohm,posture,electrode_path';

/** Every hostile text is a client of its own, with its own program, site, device and note; two visits each. */
const fileWith = (texts: readonly string[]): Uint8Array => {
  const lines = texts.flatMap((text) =>
    ['2025-03-03,170,80,500,55', '2025-06-02,170,79,505,54'].map((values) => {
      const cells = [text, text, '1970-01-01', 'F', text, '2025-03-03', text, text, text, text].map(quoted);
      return `${cells.join(',')},${values},lying,hand-to-foot`;
    }),
  );
  return new TextEncoder().encode([HEADER, ...lines].join('\n'));
};

/** An id is read without characters that nobody sees; other texts stay as they are. */
const asId = (text: string): string => text.replaceAll('\u0000', '');

const expectTextOnly = async (engine: Engine, texts: readonly string[], asOf: Cohort['summary']['asOf']) => {
  const cohort = await createCohort(engine, demoSettings, asOf);
  const sorted = [...texts].sort();
  const stored = await engine.query('SELECT client_id, family_name, program, site, device_id, note FROM readings');
  expect(stored).toHaveLength(2 * texts.length);
  const others = stored.map(({ client_id: _, ...row }) => new Set(Object.values(row)));
  expect(others.filter((values) => values.size !== 1)).toEqual([]);
  expect([...new Set(stored.map((row) => String(row['client_id'])))].sort()).toEqual(texts.map(asId).sort());
  expect(cohort.summary).toMatchObject({ clients: texts.length, visits: 2 * texts.length });
  expect(cohort.summary.sites.toSorted()).toEqual(sorted);
  for (const text of texts) {
    const byProgram = await cohort.programs(filterOf('ffm', { program: text }), 'baseline-latest');
    expect(byProgram.map((row) => [row.program, row.nClients])).toEqual([[text, 1]]);
    const bySite = await cohort.clients(filterOf('ffm', { site: text }));
    expect(bySite.map((row) => [row.client, row.site, row.familyName])).toEqual([[asId(text), text, text]]);
    const changes = await cohort.changes(filterOf('weight', { program: text, site: text }), 'consecutive');
    expect(changes.map((row) => [row.client, row.change])).toEqual([[asId(text), -1]]);
  }
  expect(await cohort.clients(filterOf('ffm', { program: "x' OR 1 = 1 --" }))).toEqual([]);
};

const cluster: { postgres?: TemporaryPostgres } = {};

beforeAll(async () => {
  if (postgresInstalled) cluster.postgres = await startTemporaryPostgres();
});

afterAll(async () => {
  await cluster.postgres?.stop();
});

const imported = async (engine: Engine, texts: readonly string[]): Promise<Cohort['summary']['asOf']> => {
  const plan = await importBytes(engine, 'visits.csv', fileWith(texts));
  expect(plan).toMatchObject({ accepted: 2 * texts.length, refused: 0, held: 0 });
  if (plan.lastVisit === null) throw new Error('no visit was imported');
  return plan.lastVisit;
};

describe('a cell never becomes SQL', () => {
  it.each([
    ['native DuckDB', openNodeEngine, HOSTILE],
    ['DuckDB-wasm', openWasmEngine, HOSTILE.filter((_, index) => index % 3 === 0)],
  ])('on %s: ids, programs, sites, devices and notes stay text, and filters find them', async (_, start, some) => {
    const engine = await start();
    try {
      const texts = [...some, WITH_NUL];
      await expectTextOnly(engine, texts, await imported(engine, texts));
    } finally {
      await engine.close();
    }
  });

  it.skipIf(!postgresInstalled)(
    `on PostgreSQL: all but NUL stays text${postgresInstalled ? '' : ` (${postgresAbsent})`}`,
    async () => {
      const duckdb = await openNodeEngine();
      const postgres = await openPostgresEngine(cluster.postgres?.connection ?? {});
      try {
        const asOf = await imported(duckdb, HOSTILE);
        await copyReadings(duckdb, postgres);
        await expectTextOnly(postgres, HOSTILE, asOf);
      } finally {
        await duckdb.close();
        await postgres.close();
      }
    },
  );
});
