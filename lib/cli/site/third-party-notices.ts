import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

interface Lock {
  readonly packages: Readonly<
    Record<string, { readonly version?: string; readonly license?: string; readonly dev?: boolean }>
  >;
}

const licenceFile = /^(licen[cs]e|copying|notice)([.-].*)?$/i;

/** The licence texts of every installed package that is not only for development, as one text in the order of their names. */
export const thirdPartyNotices = (root: string): string => {
  const lock = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8')) as Lock;
  return Object.entries(lock.packages)
    .filter(([path, entry]) => path !== '' && entry.dev !== true && existsSync(join(root, path)))
    .map(([path, entry]) => {
      const texts = readdirSync(join(root, path))
        .filter((name) => licenceFile.test(name))
        .sort()
        .map((name) => readFileSync(join(root, path, name), 'utf8').trim());
      const name = path.slice(path.lastIndexOf('node_modules/') + 'node_modules/'.length);
      return [`${name} ${entry.version ?? ''} (${entry.license ?? 'licence in its own files'})`, ...texts].join('\n\n');
    })
    .join(`\n\n${'='.repeat(80)}\n\n`);
};
