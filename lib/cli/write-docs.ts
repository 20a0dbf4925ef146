import { readFile, writeFile } from 'node:fs/promises';
import { DOCS_PAGES } from '../workspace/docs-pages';

for (const { path, current } of DOCS_PAGES) {
  const file = new URL(`../../${path}`, import.meta.url);
  const page = await readFile(file, 'utf8').catch(() => '');
  const next = current(page);
  if (next === page) continue;
  await writeFile(file, next);
  process.stderr.write(`${path} written\n`);
}
