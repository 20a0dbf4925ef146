import Papa from 'papaparse';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { openNodeEngine } from '../../lib/engine/node';
import type { Engine } from '../../lib/engine/types';
import { reading } from '../cohort/small-clinic';
import { file, imported, newPlace, SETTINGS, value, workspaceOn } from '../workspace/workspace-on';

type Cells = Record<string, string>;

let engine: Engine;
beforeAll(async () => {
  engine = await openNodeEngine();
});
afterAll(() => engine.close());

const VISITS = file('visits.csv', [
  reading('a', '2025-01-06'),
  reading('zoe', '2025-01-06'),
  reading('a', '2025-02-30'),
  reading('zoe', '2025-03-32'),
  reading('c', '2025-03-06'),
]);

const DAYS: Readonly<Record<string, string>> = { '2025-02-30': '2025-02-28', '2025-03-32': '2025-03-31' };

test('a corrected report of an erased person’s rows stays out, its other rows complete the rewritten file', async () => {
  const place = newPlace();
  const workspace = workspaceOn(engine, place);
  const { clinic, plan: before } = value(await imported(workspace, [VISITS], 'new', SETTINGS));
  expect([before.accepted, before.refused]).toEqual([3, 2]);
  const report = await workspace.reportOf(before);
  const rows = Papa.parse<Cells>((await report.blob.text()).replace('\uFEFF', ''), {
    header: true,
    skipEmptyLines: true,
  }).data;
  const corrected = rows.map((row) => ({ ...row, visit_date: DAYS[row['visit_date'] ?? ''] ?? '' }));
  expect(corrected.map((row: Cells) => [row['client_id'], row['visit_date']])).toEqual([
    ['a', '2025-02-28'],
    ['zoe', '2025-03-31'],
  ]);
  const given = { name: 'report.csv', blob: new Blob([Papa.unparse(corrected)]) };

  value(await workspace.erase('zoe'));
  const after = value(await imported(workspace, [given], clinic.id, SETTINGS));
  expect(after.plan).toMatchObject({ accepted: 3, refused: 0 });
  expect(
    (await workspace.rowsOf('a')).filter(({ status }) => status === 'accepted').map(({ cells }) => cells['visit_date']),
  ).toEqual(['2025-01-06', '2025-02-28']);
  expect(await workspace.rowsOf('zoe')).toEqual([]);
  const kept = await Promise.all(
    (await place.store.blobs()).map(async ({ name }) => (await place.store.getBlob(name))?.text()),
  );
  expect(kept.join('\n')).not.toContain('zoe');
});
