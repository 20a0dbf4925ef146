import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { projectRoot } from '../../../lib/cli/site/site-paths';
import { COLUMNS } from '../../../lib/import/columns';
import { openTables } from '../../../lib/import/open-tables';
import { mappedRows, understood } from './tables';

test('the demo clinic’s own export maps onto itself: no question, every cell as it is written, the unknown column kept', async () => {
  const bytes = readFileSync(join(projectRoot, 'sample-data/visits.csv'));
  const opened = await openTables('visits.csv', new Blob([Uint8Array.from(bytes)]));
  const [table] = opened.ok ? opened.value : [];
  if (table === undefined) throw new Error('the export cannot be opened');
  const { mapping, questions, profile } = await understood(table);
  expect(questions).toEqual([]);
  const source = new Map<number, readonly unknown[]>();
  for await (const batch of table.rows()) for (const row of batch) source.set(row.line, row.cells);
  const rows = await mappedRows(table, mapping);
  expect(rows.length).toBe(profile.rows);
  expect(rows.length).toBeGreaterThan(4000);
  const places = COLUMNS.map(({ name }) => profile.header.indexOf(name));
  const differing = rows.filter(({ line, cells, trouble, changed }) => {
    const given = source.get(line) ?? [];
    return (
      trouble !== undefined ||
      changed.length > 0 ||
      cells.some((cell, index) => cell !== (given[places[index] ?? -1] ?? ''))
    );
  });
  expect(differing).toEqual([]);
  expect(rows.every(({ line, extra }) => extra === source.get(line)?.[profile.header.indexOf('room')])).toBe(true);
});
