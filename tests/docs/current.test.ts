import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { COLUMNS } from '../../lib/import/columns';
import { MEASURE_IDS } from '../../lib/measures/measure-id';
import { docsTable } from '../../lib/workspace/docs-table';
import { DOCS_PAGES } from '../../lib/workspace/docs-pages';
import { withGenerated } from '../../lib/workspace/with-generated';

const read = (path: string): string => {
  const file = new URL(`../../${path}`, import.meta.url);
  return existsSync(file) ? readFileSync(file, 'utf8') : '';
};

describe('a page with generated blocks', () => {
  test.each(DOCS_PAGES.map((page) => [page.path, page] as const))(
    '%s is current (npm run docs)',
    (path, { current }) => {
      expect(current(read(path))).toBe(read(path));
    },
  );

  test('names every column and every value', () => {
    const [readMe, codebook] = ['README.md', 'sample-data/CODEBOOK.md'].map(read);
    for (const { name } of COLUMNS) {
      expect(readMe).toContain(`| \`${name}\` `);
      expect(codebook).toContain(`| \`${name}\` `);
    }
    for (const id of MEASURE_IDS) expect(readMe).toContain(`| \`${id}\` `);
  });

  test('keeps what stands around a block, and changes nothing the second time', () => {
    const block = { name: 'x', heading: '## X', text: () => 'new' };
    const page = 'before\n<!-- x:begin -->old<!-- x:end -->\nafter\n';
    const written = withGenerated(page, block);
    expect(written).toBe('before\n<!-- x:begin -->\n\nnew\n\n<!-- x:end -->\nafter\n');
    expect(withGenerated(written, block)).toBe(written);
    expect(withGenerated('', block)).toBe('## X\n\n<!-- x:begin -->\n\nnew\n\n<!-- x:end -->\n');
  });

  test('has tables whose cells cannot break them', () => {
    expect(docsTable(['a'], [['|Z| in\nlines']])).toBe('| a              |\n| -------------- |\n| \\|Z\\| in lines |');
  });
});
