import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { z } from 'zod';
import { type HeaderList } from './security-headers';
import { type SitePaths } from './site-paths';

/** What is kept beside a built site: the hash of what it was built from, and the headers it needs. */
export interface SiteRecord {
  readonly inputs: string;
  readonly headers: HeaderList;
}

const recordSchema = z.object({ inputs: z.string(), headers: z.array(z.tuple([z.string(), z.string()])) });

/** The stored record, or undefined where there is none or it cannot be read. */
export const readSiteRecord = (paths: SitePaths): SiteRecord | undefined => {
  if (!existsSync(paths.record)) return undefined;
  try {
    return recordSchema.parse(JSON.parse(readFileSync(paths.record, 'utf8')));
  } catch {
    return undefined;
  }
};

export const writeSiteRecord = (paths: SitePaths, record: SiteRecord): void => {
  mkdirSync(paths.dist, { recursive: true });
  writeFileSync(paths.record, `${JSON.stringify(record, null, 2)}\n`);
};

/** Forgets the record, so that a build which stops half-way is never taken for a finished one. */
export const dropSiteRecord = (paths: SitePaths): void => {
  rmSync(paths.record, { force: true });
};
