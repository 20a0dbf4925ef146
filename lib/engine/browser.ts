import { AsyncDuckDB, VoidLogger, type AsyncDuckDBConnection } from '@duckdb/duckdb-wasm';
import { DataType, type Field } from 'apache-arrow';
import { fromDayNumber } from '../core/iso-date';
import { createSerial } from '../core/serial';
import { bootStatements } from './boot-statements';
import { rowChunks } from './row-chunks';
import type { Cell, Engine, Row } from './types';

const START_LIMIT_MS = 60_000;

const cellOf = (field: Field, value: unknown): Cell => {
  if (value === null || value === undefined) return null;
  if (DataType.isDate(field.type)) return fromDayNumber(Number(value) / 86_400_000);
  if (typeof value === 'bigint') return Number(value);
  if (typeof value === 'string' || typeof value === 'number' || typeof value === 'boolean') return value;
  throw new Error('a result column has a type that the pipeline does not use');
};

const start = async (folderUrl: string): Promise<{ db: AsyncDuckDB; worker: Worker }> => {
  const worker = new Worker(`${folderUrl}duckdb-browser-eh.worker.js`);
  const db = new AsyncDuckDB(new VoidLogger(), worker);
  const failed = new Promise<never>((_, reject) => {
    worker.addEventListener('error', () => {
      reject(new Error('the database worker could not be started'));
    });
    setTimeout(() => {
      reject(new Error('the database did not start in time'));
    }, START_LIMIT_MS);
  });
  try {
    await Promise.race([db.instantiate(`${folderUrl}duckdb-eh.wasm`), failed]);
    await Promise.race([
      db.open({
        path: ':memory:',
        query: { castBigIntToDouble: true, castDecimalToDouble: true, castTimestampToDate: true },
      }),
      failed,
    ]);
  } catch (error) {
    worker.terminate();
    throw error;
  }
  return { db, worker };
};

const readRows = async (
  connection: AsyncDuckDBConnection,
  sql: string,
  signal?: AbortSignal,
): Promise<readonly Row[]> => {
  signal?.throwIfAborted();
  const cancel = (): void => {
    void connection.cancelSent();
  };
  signal?.addEventListener('abort', cancel, { once: true });
  try {
    const reader = await connection.send(sql, true);
    const rows: Row[] = [];
    for await (const batch of reader) {
      const { fields } = batch.schema;
      for (let index = 0; index < batch.numRows; index += 1) {
        const row: Record<string, Cell> = {};
        fields.forEach((field, column) => {
          row[field.name] = cellOf(field, batch.getChildAt(column)?.get(index));
        });
        rows.push(row);
      }
    }
    return rows;
  } finally {
    signal?.removeEventListener('abort', cancel);
  }
};

/**
 * DuckDB in a worker of the page. `folderUrl` is the absolute address of the folder with the engine's two files and
 * ends with a slash. Rejects when the worker or the engine does not start.
 */
export const openBrowserEngine = async (folderUrl: string): Promise<Engine> => {
  const { db, worker } = await start(folderUrl);
  const connection = await db.connect();
  for (const statement of bootStatements('import/', undefined)) await connection.query(statement);
  const serial = createSerial();
  return {
    dialect: 'duckdb',
    run: (sql) =>
      serial(async () => {
        await connection.query(sql);
      }),
    query: (sql, signal) => serial(() => readRows(connection, sql, signal)),
    insert: (table, columns, rows) =>
      serial(async () => {
        const slots = `(${columns.map(() => '?').join(', ')})`;
        for (const chunk of rowChunks(rows, columns.length)) {
          const values = chunk.map(() => slots).join(', ');
          const statement = await connection.prepare(`INSERT INTO ${table} (${columns.join(', ')}) VALUES ${values}`);
          try {
            await statement.query(...chunk.flat());
          } finally {
            await statement.close();
          }
        }
      }),
    addFile: async (name, bytes) => {
      const path = `import/${name}`;
      await db.registerFileBuffer(path, bytes);
      return path;
    },
    removeFile: async (name) => {
      await db.dropFile(`import/${name}`);
    },
    close: async () => {
      await connection.close();
      await db.terminate();
      worker.terminate();
    },
  };
};
