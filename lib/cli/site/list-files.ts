import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';

/** Every file under a folder as a path relative to it, with forward slashes, in code-unit order. A folder that is absent has none. */
export const listFiles = (folder: string): readonly string[] => {
  if (!existsSync(folder)) return [];
  return readdirSync(folder, { withFileTypes: true })
    .flatMap((entry) =>
      entry.isDirectory()
        ? listFiles(join(folder, entry.name)).map((below) => `${entry.name}/${below}`)
        : entry.isFile()
          ? [entry.name]
          : [],
    )
    .sort((a, b) => (a < b ? -1 : 1));
};
