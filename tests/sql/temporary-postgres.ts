import { execFile, execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { chown, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { Client, type ClientConfig } from 'pg';

const BIN = '/usr/lib/postgresql/15/bin';
const USER = 'postgres';

const runFile = promisify(execFile);

/** Whether PostgreSQL 15 is installed here. */
export const postgresInstalled = existsSync(join(BIN, 'initdb'));

export const postgresAbsent = `skipped: no PostgreSQL 15 under ${BIN}`;

/** A cluster of its own that lives as long as the tests. */
export interface TemporaryPostgres {
  readonly connection: ClientConfig;
  /** A further database, empty, with the given collation. */
  readonly createDatabase: (name: string, collation: string) => Promise<ClientConfig>;
  readonly stop: () => Promise<void>;
}

const isRoot = process.getuid?.() === 0;

const ownerId = (flag: '-u' | '-g'): number => Number(execFileSync('id', [flag, USER], { encoding: 'utf8' }).trim());

/** The server refuses to run as root. */
const asOwner = async (program: string, args: readonly string[]): Promise<void> => {
  const command = [join(BIN, program), ...args];
  const [file = '', ...rest] = isRoot ? ['runuser', '-u', USER, '--', ...command] : command;
  await runFile(file, rest, { cwd: tmpdir() });
};

/** Starts a PostgreSQL 15 that listens on a socket in a temporary folder only. */
export const startTemporaryPostgres = async (): Promise<TemporaryPostgres> => {
  const folder = await mkdtemp(join(tmpdir(), 'driftline-pg-'));
  if (isRoot) await chown(folder, ownerId('-u'), ownerId('-g'));
  const data = join(folder, 'data');
  await asOwner('initdb', ['-D', data, '-U', USER, '--locale=C', '--encoding=UTF8', '--auth=trust', '--no-sync']);
  const options = `-c listen_addresses='' -c unix_socket_directories='${folder}' -c fsync=off -c synchronous_commit=off -c full_page_writes=off`;
  await asOwner('pg_ctl', ['-D', data, '-w', '-t', '60', '-l', join(folder, 'log'), '-o', options, 'start']);
  const connection: ClientConfig = { host: folder, user: USER, database: 'postgres' };
  return {
    connection,
    createDatabase: async (name, collation) => {
      const client = new Client(connection);
      await client.connect();
      await client.query(
        `CREATE DATABASE ${name} TEMPLATE template0 ENCODING 'UTF8' LC_COLLATE '${collation}' LC_CTYPE '${collation}'`,
      );
      await client.end();
      return { ...connection, database: name };
    },
    stop: async () => {
      await asOwner('pg_ctl', ['-D', data, '-w', '-m', 'immediate', 'stop']);
      await rm(folder, { recursive: true, force: true });
    },
  };
};
