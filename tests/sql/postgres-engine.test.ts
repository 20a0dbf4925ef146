import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openPostgresEngine } from '../../lib/engine/postgres';
import type { Engine } from '../../lib/engine/types';
import {
  postgresAbsent,
  postgresInstalled,
  startTemporaryPostgres,
  type TemporaryPostgres,
} from './temporary-postgres';

const open: { cluster?: TemporaryPostgres; engine?: Engine } = {};

const engine = (): Engine => {
  if (open.engine === undefined) throw new Error('PostgreSQL was not opened');
  return open.engine;
};

beforeAll(async () => {
  if (!postgresInstalled) return;
  open.cluster = await startTemporaryPostgres();
  open.engine = await openPostgresEngine(open.cluster.connection);
});

afterAll(async () => {
  await open.engine?.close();
  await open.cluster?.stop();
});

describe.skipIf(!postgresInstalled)(`the PostgreSQL engine${postgresInstalled ? '' : ` (${postgresAbsent})`}`, () => {
  it('returns dates as text, whole and exact numbers as numbers, nothing as null', async () => {
    const rows = await engine().query(
      `SELECT CAST('2025-03-30' AS DATE) AS day, COUNT(*) AS whole, 2.5 AS exact, 0.1E0 + CAST(0.2E0 AS DOUBLE PRECISION) AS sum,
  CAST(NULL AS TEXT) AS nothing, 'a' AS word`,
    );
    expect(rows).toEqual([
      { day: '2025-03-30', whole: 1, exact: 2.5, sum: 0.30000000000000004, nothing: null, word: 'a' },
    ]);
  });

  it('replaces a table, with or without a query, even one that a view stands on', async () => {
    await engine().run('CREATE OR REPLACE TABLE kept (n INTEGER)');
    await engine().insert('kept', ['n'], [[1], [2]]);
    await engine().run('CREATE VIEW seen AS SELECT n FROM kept');
    await engine().run('CREATE OR REPLACE TABLE kept AS\nSELECT 7 AS n');
    expect(await engine().query('SELECT n FROM kept')).toEqual([{ n: 7 }]);
    const analysed = "SELECT CAST(reltuples AS INTEGER) AS n FROM pg_class WHERE relname = 'kept'";
    expect(await engine().query(analysed)).toEqual([{ n: 1 }]);
  });

  it('inserts more values than one statement can hold', async () => {
    await engine().run('CREATE OR REPLACE TABLE many (n INTEGER, word TEXT, day DATE)');
    const rows = Array.from({ length: 25_000 }, (_, n) => [n, `'; DROP TABLE many; -- ${String(n)}`, '2025-03-30']);
    await engine().insert('many', ['n', 'word', 'day'], rows);
    expect(await engine().query('SELECT COUNT(*) AS n, MAX(n) AS last, MIN(day) AS day FROM many')).toEqual([
      { n: 25_000, last: 24_999, day: '2025-03-30' },
    ]);
  });

  it('stores no text with a NUL character and says so without the text', async () => {
    await engine().run('CREATE OR REPLACE TABLE words (word TEXT)');
    await expect(engine().insert('words', ['word'], [['Ada\u0000Lund']])).rejects.toThrow(/NUL character; words/);
    await expect(engine().insert('words', ['word'], [['Ada\u0000Lund']])).rejects.not.toThrow(/Ada/);
  });

  it('refuses a database whose text is not ordered by bytes', async () => {
    const other = await open.cluster?.createDatabase('other_order', 'C.UTF-8');
    await expect(openPostgresEngine(other ?? {})).rejects.toThrow(/collation C/);
  });

  it('reads no files', async () => {
    await expect(engine().addFile('visits.csv', new Uint8Array())).rejects.toThrow(/import them on DuckDB/);
    await expect(engine().removeFile('visits.csv')).rejects.toThrow(/import them on DuckDB/);
  });

  it('ends a running query when it is no longer wanted, and answers the next one', async () => {
    const controller = new AbortController();
    const slow = engine().query('SELECT COUNT(*) AS n FROM GENERATE_SERIES(1, 2000000000) AS s', controller.signal);
    setTimeout(() => {
      controller.abort();
    }, 100);
    await expect(slow).rejects.toMatchObject({ name: 'AbortError' });
    expect(await engine().query('SELECT 1 AS n')).toEqual([{ n: 1 }]);
    await expect(engine().query('SELECT 1 AS n', controller.signal)).rejects.toMatchObject({ name: 'AbortError' });
  });
});
