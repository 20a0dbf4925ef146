import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

interface Lock {
  readonly packages: Readonly<
    Record<string, { readonly version?: string; readonly license?: string; readonly dev?: boolean }>
  >;
}

const licenceFile = /^(licen[cs]e|copying|notice)([.-].*)?$/i;

const line = '='.repeat(80);

const licenceText = (folder: string): string =>
  readdirSync(folder)
    .filter((name) => licenceFile.test(name))
    .sort()
    .map((name) => readFileSync(join(folder, name), 'utf8').trim())
    .join('\n\n');

/** The licence texts of every installed package that is not only for development, each text once under the packages that carry it. */
export const thirdPartyNotices = (root: string): string => {
  const lock = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8')) as Lock;
  const packagesByText = new Map<string, string[]>();
  for (const [path, entry] of Object.entries(lock.packages)) {
    if (path === '' || entry.dev === true || !existsSync(join(root, path))) continue;
    const name = path.slice(path.lastIndexOf('node_modules/') + 'node_modules/'.length);
    const text = licenceText(join(root, path));
    const packages = packagesByText.get(text) ?? [];
    packagesByText.set(text, [...packages, `${name} ${entry.version ?? ''} (${entry.license ?? 'see the text'})`]);
  }
  return [...packagesByText]
    .map(([text, packages]) => `${packages.join('\n')}\n\n${text === '' ? 'No licence file in the package.' : text}\n`)
    .join(`\n${line}\n\n`);
};
