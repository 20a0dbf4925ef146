import { createHash } from 'node:crypto';
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { fileSha256 } from './file-sha256';
import { listFiles } from './list-files';

const folders = ['app', 'lib', 'public', 'sample-data'];
const singleFiles = ['package.json', 'package-lock.json', 'tsconfig.json', 'next.config.mjs'];

// The build itself writes these two, from inputs that are hashed elsewhere in the list.
const isWrittenByBuild = (path: string): boolean =>
  path.startsWith('public/duckdb-') || path.startsWith('public/demo/');

/** One SHA-256 over the names and bytes of all that a build of the site reads. Equal hashes: the same site. */
export const inputsHash = (root: string): string => {
  const inFolders = folders.flatMap((folder) => listFiles(join(root, folder)).map((path) => `${folder}/${path}`));
  const paths = [...inFolders, ...singleFiles.filter((path) => existsSync(join(root, path)))].filter(
    (path) => !isWrittenByBuild(path),
  );
  const hash = createHash('sha256');
  for (const path of paths) hash.update(`${path}\0${fileSha256(join(root, path))}\n`);
  return hash.digest('hex');
};
