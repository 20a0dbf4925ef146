import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { strToU8, zipSync, type Zippable } from 'fflate';
import { headerSnippets } from './header-snippets';
import { listFiles } from './list-files';
import { readMeFirst } from './read-me-first';
import { type HeaderList } from './security-headers';

/** What goes into a package beside the site itself. */
export interface PackageContents {
  readonly version: string;
  readonly headers: HeaderList;
  readonly licence: string;
  readonly notices: string;
}

/**
 * The site as one zip: its files in `site/`, the headers for three servers in `servers/`, instructions and licences on top.
 * The same files give the same bytes: every entry carries the same time.
 *
 * @param out absolute folder of the built site
 */
export const packageSite = (out: string, contents: PackageContents): Uint8Array => {
  const top = `driftline-${contents.version}`;
  const texts: Readonly<Record<string, string>> = {
    'READ-ME-FIRST.txt': readMeFirst(contents.version),
    LICENSE: contents.licence,
    'THIRD-PARTY-NOTICES.txt': contents.notices,
    ...Object.fromEntries(
      Object.entries(headerSnippets(contents.headers)).map(([name, text]) => [`servers/${name}`, text]),
    ),
  };
  const entries: Zippable = {};
  for (const [name, text] of Object.entries(texts)) entries[`${top}/${name}`] = strToU8(text);
  for (const path of listFiles(out)) entries[`${top}/site/${path}`] = new Uint8Array(readFileSync(join(out, path)));
  return zipSync(entries, { level: 6, mtime: '1980-01-02T00:00:00' });
};
