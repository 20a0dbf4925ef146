import { copyFileSync, mkdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { listFiles } from './list-files';
import { type SitePaths } from './site-paths';

const isDemoFile = (name: string): boolean => /\.(csv|json)$/.test(name) && !name.includes('/');

/** Copies the invented clinic's data files from `sample-data/` to `public/demo/`, which it empties first. Returns their names. */
export const copyDemoFiles = (paths: SitePaths): readonly string[] => {
  const target = join(paths.publicFolder, 'demo');
  rmSync(target, { recursive: true, force: true });
  const names = listFiles(paths.sampleData).filter(isDemoFile);
  if (names.length > 0) mkdirSync(target, { recursive: true });
  for (const name of names) copyFileSync(join(paths.sampleData, name), join(target, name));
  return names;
};
