import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DuckDBInstance } from '@duckdb/node-api';
import { bootStatements } from './boot-statements';
import { plainCell } from './plain-cell';
import { rowChunks } from './row-chunks';
import type { Cell, Engine, Row } from './types';

/**
 * Native DuckDB in Node, for the command line and the tests. One thread, so that sums come out the same at every run
 * and as in the browser.
 */
export const openNodeEngine = async (): Promise<Engine> => {
  const folder = `${await mkdtemp(join(tmpdir(), 'driftline-'))}/`;
  const instance = await DuckDBInstance.create(':memory:');
  const connection = await instance.connect();
  for (const statement of bootStatements(folder, 1)) await connection.run(statement);
  const query = async (sql: string, signal?: AbortSignal): Promise<readonly Row[]> => {
    signal?.throwIfAborted();
    const interrupt = (): void => {
      connection.interrupt();
    };
    signal?.addEventListener('abort', interrupt, { once: true });
    try {
      const reader = await connection.runAndReadAll(sql);
      const names = reader.columnNames();
      return reader.getRows().map((cells) => {
        const row: Record<string, Cell> = {};
        names.forEach((name, index) => {
          row[name] = plainCell(cells[index]);
        });
        return row;
      });
    } finally {
      signal?.removeEventListener('abort', interrupt);
    }
  };
  return {
    dialect: 'duckdb',
    run: async (sql) => {
      await connection.run(sql);
    },
    query,
    insert: async (table, columns, rows) => {
      for (const chunk of rowChunks(rows, columns.length)) {
        const slots = chunk
          .map(
            (_, row) => `(${columns.map((__, column) => `$${String(row * columns.length + column + 1)}`).join(', ')})`,
          )
          .join(', ');
        const statement = await connection.prepare(`INSERT INTO ${table} (${columns.join(', ')}) VALUES ${slots}`);
        statement.bind(chunk.flat());
        await statement.run();
      }
    },
    addFile: async (name, bytes) => {
      const path = join(folder, name);
      await writeFile(path, bytes);
      return path;
    },
    removeFile: (name) => rm(join(folder, name), { force: true }),
    close: async () => {
      connection.closeSync();
      instance.closeSync();
      await rm(folder, { recursive: true, force: true });
    },
  };
};
