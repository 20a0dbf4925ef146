import { copyFileSync, existsSync, mkdirSync, readFileSync, readdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { err, ok, type Result } from '../../core/result';
import { type AppError } from '../../core/app-error';
import { fileSha256 } from './file-sha256';

/** The database engine's files that the browser loads, with the hashes they must have. */
export interface EngineFiles {
  readonly package: string;
  readonly version: string;
  readonly files: readonly { readonly name: string; readonly sha256: string }[];
}

const wrongEngine = (message: string): Result<never, AppError> =>
  err({
    code: 'engine-files-differ',
    message,
    remedy:
      'Run "npm ci". After a deliberate upgrade, put the new version and hashes into lib/cli/site/engine-files.json.',
  });

/**
 * Copies the engine's files from the installed package to `public/duckdb-<version>/` and checks each against its
 * committed SHA-256. Folders of other versions are removed, so that the site never ships two engines.
 *
 * @returns the folder's name below `public/`; the error `engine-files-differ` when a version or a hash is not the expected one.
 */
export const copyEngineFiles = (root: string, wanted: EngineFiles): Result<string, AppError> => {
  const source = join(root, 'node_modules', wanted.package);
  if (!existsSync(source)) return wrongEngine(`${wanted.package} is not installed.`);
  const installed = JSON.parse(readFileSync(join(source, 'package.json'), 'utf8')) as { version: string };
  if (installed.version !== wanted.version)
    return wrongEngine(`${wanted.package} is installed as ${installed.version}; ${wanted.version} is expected.`);

  const publicFolder = join(root, 'public');
  const folder = `duckdb-${wanted.version}`;
  mkdirSync(join(publicFolder, folder), { recursive: true });
  for (const name of readdirSync(publicFolder))
    if (name.startsWith('duckdb-') && name !== folder) rmSync(join(publicFolder, name), { recursive: true });

  for (const file of wanted.files) {
    const from = join(source, 'dist', file.name);
    if (!existsSync(from)) return wrongEngine(`${wanted.package} holds no file ${file.name}.`);
    if (fileSha256(from) !== file.sha256) return wrongEngine(`${file.name} has not the expected SHA-256.`);
    copyFileSync(from, join(publicFolder, folder, file.name));
  }
  return ok(folder);
};
