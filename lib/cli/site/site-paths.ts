import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** Absolute folder of the checkout that this file belongs to. */
export const projectRoot = fileURLToPath(new URL('../../../', import.meta.url));

/** Where a checkout keeps the built site, its record and the packages. */
export interface SitePaths {
  readonly root: string;
  readonly out: string;
  readonly dist: string;
  readonly record: string;
  readonly publicFolder: string;
  readonly sampleData: string;
}

export const sitePaths = (root: string): SitePaths => ({
  root,
  out: join(root, 'out'),
  dist: join(root, 'dist'),
  record: join(root, 'dist', 'site-record.json'),
  publicFolder: join(root, 'public'),
  sampleData: join(root, 'sample-data'),
});
