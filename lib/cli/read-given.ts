import { openAsBlob } from 'node:fs';
import { readdir, stat } from 'node:fs/promises';
import { basename, join, resolve } from 'node:path';
import { meantFiles } from '../workspace/meant-files';
import type { GivenFile } from '../workspace/workspace';

interface Found {
  readonly name: string;
  readonly path: string;
}

/** The files below a folder; a link to a folder is not followed. */
const filesBelow = async ({ name, path }: Found): Promise<readonly Found[]> => {
  const files: Found[] = [];
  for (const entry of await readdir(path, { withFileTypes: true })) {
    const inside = { name: `${name}/${entry.name}`, path: join(path, entry.name) };
    if (entry.isDirectory()) files.push(...(await filesBelow(inside)));
    else if (entry.isFile() || (await stat(inside.path).catch(() => undefined))?.isFile() === true) files.push(inside);
  }
  return files;
};

const asGiven = async ({ name, path }: Found): Promise<GivenFile> => ({ name, blob: await openAsBlob(path) });

/**
 * The files of a call, none of them in memory, or the path of the first that is not there; those of a folder by their
 * path, sorted, as Import takes them.
 */
export const readGiven = async (paths: readonly string[]): Promise<readonly GivenFile[] | string> => {
  const files: GivenFile[] = [];
  for (const path of paths) {
    const found = await stat(path).catch(() => undefined);
    if (found?.isDirectory() === true) {
      const below = await filesBelow({ name: basename(resolve(path)), path });
      files.push(...meantFiles(await Promise.all(below.map(asGiven))));
    } else if (found?.isFile() === true) files.push(await asGiven({ name: basename(path), path }));
    else return path;
  }
  return files;
};
