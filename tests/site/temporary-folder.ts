import { mkdirSync, mkdtempSync, realpathSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';

/** A new folder that holds the given files. Whoever asks for it removes it. */
export const temporaryFolder = (files: Readonly<Record<string, string>>): string => {
  const folder = realpathSync(mkdtempSync(join(tmpdir(), 'site-')));
  for (const [name, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, name)), { recursive: true });
    writeFileSync(join(folder, name), text);
  }
  return folder;
};
