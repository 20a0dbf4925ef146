import { AsyncDuckDB, VoidLogger, type AsyncDuckDBConnection } from '@duckdb/duckdb-wasm';
import { DataType, type Field } from 'apache-arrow';
import { fromDayNumber } from '../core/iso-date';
import { workspaceErrors } from '../core/messages/en/workspace-errors';
import { createSerial } from '../core/serial';
import { bootStatements } from './boot-statements';
import { rowChunks } from './row-chunks';
import { startWorker, type EngineWorker } from './start-worker';
import type { Cell, Engine, Row } from './types';

/** How long the engine's files may bring nothing. A slow line still brings bytes. */
const SILENCE_LIMIT_MS = 30_000;

const CLOSE_LIMIT_MS = 2000;

/** The engine of the page could not be started. Reads as an error for a person. */
class EngineNotStarted extends Error {
  override readonly name = 'EngineNotStarted';
  readonly code = workspaceErrors.engineNotStarted.code;
  readonly remedy = workspaceErrors.engineNotStarted.remedy;
  constructor(cause: unknown) {
    super(workspaceErrors.engineNotStarted.message, { cause });
  }
}

const cellOf = (field: Field, value: unknown): Cell => {
  if (value === null || value === undefined) return null;
  if (DataType.isDate(field.type)) return fromDayNumber(Number(value) / 86_400_000);
  if (typeof value === 'bigint') return Number(value);
  if (typeof value === 'string' || typeof value === 'number' || typeof value === 'boolean') return value;
  throw new Error('a result column has a type that the pipeline does not use');
};

/** Rejects once nothing was heard for too long; `heard` puts it off. */
const silence = (): { readonly tooLong: Promise<never>; readonly heard: () => void; readonly end: () => void } => {
  let limit: ReturnType<typeof setTimeout> | undefined;
  let refuse: (error: Error) => void = () => undefined;
  const tooLong = new Promise<never>((_, reject) => {
    refuse = reject;
  });
  tooLong.catch(() => undefined);
  const end = (): void => {
    clearTimeout(limit);
  };
  const heard = (): void => {
    end();
    limit = setTimeout(() => {
      refuse(new Error('the database did not start in time'));
    }, SILENCE_LIMIT_MS);
  };
  return { tooLong, heard, end };
};

interface Started extends EngineWorker {
  readonly db: AsyncDuckDB;
}

const start = async (folderUrl: string): Promise<Started> => {
  const { worker, died } = await startWorker(`${folderUrl}duckdb-browser-eh.worker.js`);
  const db = new AsyncDuckDB(new VoidLogger(), worker);
  const { tooLong, heard, end } = silence();
  heard();
  try {
    await Promise.race([db.instantiate(`${folderUrl}duckdb-eh.wasm`, null, heard), died, tooLong]);
    heard();
    await Promise.race([
      db.open({
        path: ':memory:',
        query: { castBigIntToDouble: true, castDecimalToDouble: true, castTimestampToDate: true },
      }),
      died,
      tooLong,
    ]);
  } catch (error) {
    worker.terminate();
    throw error;
  } finally {
    end();
  }
  return { db, worker, died };
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

const booted = async (folderUrl: string): Promise<Started & { readonly connection: AsyncDuckDBConnection }> => {
  const started = await start(folderUrl);
  const connect = async (): Promise<AsyncDuckDBConnection> => {
    const connection = await started.db.connect();
    for (const statement of bootStatements('import/', undefined)) await connection.query(statement);
    return connection;
  };
  try {
    return { ...started, connection: await Promise.race([connect(), started.died]) };
  } catch (error) {
    started.worker.terminate();
    throw error;
  }
};

/**
 * DuckDB in a worker of the page. `folderUrl` is the absolute address of the folder with the engine's two files, one
 * below that of `engine-worker.js`, and ends with a slash. Rejects with what a person can be told when the worker or the
 * engine does not start; a question rejects with an `EngineGone` when the worker fails or ends under it.
 */
export const openBrowserEngine = async (folderUrl: string): Promise<Engine> => {
  const { db, worker, died, connection } = await booted(folderUrl).catch((error: unknown) => {
    throw new EngineNotStarted(error);
  });
  const serial = createSerial();
  const ask = <T>(question: () => Promise<T>): Promise<T> => serial(() => Promise.race([question(), died]));
  return {
    dialect: 'duckdb',
    run: (sql) =>
      ask(async () => {
        await connection.query(sql);
      }),
    query: (sql, signal) => ask(() => readRows(connection, sql, signal)),
    insert: (table, columns, rows) =>
      ask(async () => {
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
      await Promise.race([db.registerFileBuffer(path, bytes), died]);
      return path;
    },
    removeFile: async (name) => {
      await Promise.race([db.dropFile(`import/${name}`), died]);
    },
    close: async () => {
      const limit = new Promise<void>((resolve) => {
        setTimeout(resolve, CLOSE_LIMIT_MS);
      });
      await Promise.race([connection.close(), died, limit]).catch(() => undefined);
      worker.terminate();
    },
  };
};
