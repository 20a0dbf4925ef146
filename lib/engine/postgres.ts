import { Client, types, type ClientConfig } from 'pg';
import { createSerial } from '../core/serial';
import type { Cell, Engine, Row } from './types';

/** A statement may hold at most 65,535 values. */
const VALUES_PER_STATEMENT = 30_000;

const PARSERS: ReadonlyMap<number, (text: string) => Cell> = new Map([
  [types.builtins.DATE, (text: string): Cell => text],
  [types.builtins.INT8, Number],
  [types.builtins.NUMERIC, Number],
]);

const cellTypes: NonNullable<ClientConfig['types']> = {
  getTypeParser: (type: number, format: 'text' | 'binary' = 'text') =>
    PARSERS.get(type) ?? (types.getTypeParser(type, format) as (text: string) => Cell),
};

const REPLACE = /^\s*CREATE OR REPLACE TABLE\s+(\w+)(\s+AS\b)?/;

/** PostgreSQL replaces no table, and plans blindly on one that was never analysed. */
const statementsOf = (sql: string): readonly string[] => {
  const [head, table, filled] = REPLACE.exec(sql) ?? [];
  if (head === undefined || table === undefined) return [sql];
  return [
    `DROP TABLE IF EXISTS ${table} CASCADE`,
    sql.replace(/CREATE OR REPLACE TABLE/, 'CREATE TABLE'),
    ...(filled === undefined ? [] : [`ANALYZE ${table}`]),
  ];
};

const refuseOtherOrders = async (client: Client): Promise<void> => {
  const { rows } = await client.query<{ collation: string; encoding: string }>(
    `SELECT datcollate AS collation, PG_ENCODING_TO_CHAR(encoding) AS encoding
FROM pg_database WHERE datname = CURRENT_DATABASE()`,
  );
  const [found] = rows;
  if (found === undefined || !['C', 'POSIX'].includes(found.collation) || found.encoding !== 'UTF8') {
    throw new Error('the database must have the collation C and the encoding UTF8: text would be ordered differently');
  }
};

const START: readonly string[] = [
  'SET client_min_messages = warning',
  'SET max_parallel_workers_per_gather = 0',
  'SET jit = off',
];

/** Ends the statement that another connection is running. */
const cancelStatement = async (connection: ClientConfig, processId: number): Promise<void> => {
  const helper = new Client(connection);
  await helper.connect();
  try {
    await helper.query('SELECT pg_cancel_backend($1)', [processId]);
  } finally {
    await helper.end();
  }
};

const readRows = async (
  client: Client,
  connection: ClientConfig,
  processId: number,
  sql: string,
  signal: AbortSignal | undefined,
): Promise<readonly Row[]> => {
  signal?.throwIfAborted();
  let cancelled: Promise<void> | undefined;
  const cancel = (): void => {
    cancelled = cancelStatement(connection, processId);
  };
  signal?.addEventListener('abort', cancel, { once: true });
  try {
    return (await client.query<Record<string, Cell>>(sql)).rows;
  } catch (error) {
    signal?.throwIfAborted();
    throw error;
  } finally {
    signal?.removeEventListener('abort', cancel);
    await cancelled;
  }
};

const insertRows = async (
  client: Client,
  table: string,
  columns: readonly string[],
  rows: readonly (readonly Cell[])[],
): Promise<void> => {
  const size = Math.max(1, Math.floor(VALUES_PER_STATEMENT / columns.length));
  for (let start = 0; start < rows.length; start += size) {
    const batch = rows.slice(start, start + size);
    if (batch.some((row) => row.some((cell) => typeof cell === 'string' && cell.includes('\u0000')))) {
      throw new Error(`PostgreSQL stores no text with a NUL character; ${table} was not filled`);
    }
    const slots = batch.map(
      (_, row) => `(${columns.map((__, column) => `$${String(row * columns.length + column + 1)}`).join(', ')})`,
    );
    await client.query(`INSERT INTO ${table} (${columns.join(', ')}) VALUES ${slots.join(', ')}`, batch.flat());
  }
};

const noFiles = (): Promise<never> =>
  Promise.reject(new Error('PostgreSQL reads no visit exports: import them on DuckDB and copy the readings'));

/**
 * PostgreSQL 15 or later, for the tests and for a clinic that keeps its readings on a server. It starts from
 * `readings`, `enrolment_rows` and `column_resolution`, as DuckDB has imported them. Rejects when the database is not ordered by bytes
 * (collation C, encoding UTF8). Text with a NUL character cannot be stored and is rejected by `insert`.
 */
export const openPostgresEngine = async (connection: ClientConfig): Promise<Engine> => {
  const client = new Client({ ...connection, types: cellTypes });
  await client.connect();
  try {
    await refuseOtherOrders(client);
    for (const statement of START) await client.query(statement);
  } catch (error) {
    await client.end();
    throw error;
  }
  const { rows } = await client.query<{ id: number }>('SELECT pg_backend_pid() AS id');
  const processId = rows[0]?.id ?? 0;
  const serial = createSerial();
  return {
    dialect: 'postgres',
    run: (sql) =>
      serial(async () => {
        for (const statement of statementsOf(sql)) await client.query(statement);
      }),
    query: (sql, signal) => serial(() => readRows(client, connection, processId, sql, signal)),
    insert: (table, columns, values) => serial(() => insertRows(client, table, columns, values)),
    addFile: noFiles,
    removeFile: noFiles,
    close: () => client.end(),
  };
};
