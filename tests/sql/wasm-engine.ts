import { createRequire } from 'node:module';
import { join } from 'node:path';
import { createDuckDB, NODE_RUNTIME, VoidLogger } from '@duckdb/duckdb-wasm/blocking';
import { DataType, type Field, type Table } from 'apache-arrow';
import { fromDayNumber } from '../../lib/core/iso-date';
import { bootStatements } from '../../lib/engine/boot-statements';
import type { Cell, Engine, Row } from '../../lib/engine/types';

const ROWS_PER_STATEMENT = 50;

const cellOf = (field: Field, value: unknown): Cell => {
  if (value === null || value === undefined) return null;
  if (DataType.isDate(field.type)) return fromDayNumber(Number(value) / 86_400_000);
  if (typeof value === 'bigint') return Number(value);
  if (typeof value === 'string' || typeof value === 'number' || typeof value === 'boolean') return value;
  throw new Error('a result column has a type that the pipeline does not use');
};

const rowsOf = (table: Table): readonly Row[] => {
  const { fields } = table.schema;
  return table.batches.flatMap((batch) =>
    Array.from({ length: batch.numRows }, (_, index) =>
      Object.fromEntries(
        fields.map((field, column) => [field.name, cellOf(field, batch.getChildAt(column)?.get(index))]),
      ),
    ),
  );
};

/**
 * The exception-handling build of DuckDB-wasm, that which the pages load, on Node's main thread: the same file, the
 * same settings, the same boot statements, without a worker.
 */
export const openWasmEngine = async (): Promise<Engine> => {
  const require = createRequire(import.meta.url);
  const mainModule = require.resolve('@duckdb/duckdb-wasm/dist/duckdb-eh.wasm');
  const mainWorker = require.resolve('@duckdb/duckdb-wasm/dist/duckdb-node-eh.worker.cjs');
  const bundle = { mainModule, mainWorker };
  const db = await createDuckDB({ mvp: bundle, eh: bundle }, new VoidLogger(), NODE_RUNTIME);
  await db.instantiate(() => undefined);
  db.open({
    path: ':memory:',
    query: { castBigIntToDouble: true, castDecimalToDouble: true, castTimestampToDate: true },
  });
  const connection = db.connect();
  for (const statement of bootStatements('import/', undefined)) connection.query(statement);
  return {
    dialect: 'duckdb',
    run: (sql) => Promise.resolve(connection.query(sql)).then(() => undefined),
    query: (sql, signal) => {
      signal?.throwIfAborted();
      return Promise.resolve(rowsOf(connection.query(sql)));
    },
    insert: (table, columns, rows) => {
      for (let start = 0; start < rows.length; start += ROWS_PER_STATEMENT) {
        const batch = rows.slice(start, start + ROWS_PER_STATEMENT);
        const slots = batch.map(() => `(${columns.map(() => '?').join(', ')})`).join(', ');
        const statement = connection.prepare(`INSERT INTO ${table} (${columns.join(', ')}) VALUES ${slots}`);
        statement.query(...batch.flat());
        statement.close();
      }
      return Promise.resolve();
    },
    addFile: (name, bytes) => {
      const path = join('import', name);
      db.registerFileBuffer(path, bytes);
      return Promise.resolve(path);
    },
    removeFile: (name) => {
      db.dropFile(join('import', name));
      return Promise.resolve();
    },
    close: () => {
      connection.close();
      return Promise.resolve();
    },
  };
};
