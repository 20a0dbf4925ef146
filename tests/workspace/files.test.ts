import { afterAll, beforeAll, expect, test } from 'vitest';
import { openNodeEngine } from '../../lib/engine/node';
import type { Engine } from '../../lib/engine/types';
import { sha256OfBlob } from '../../lib/storage/sha256-of-blob';
import { fromVersionOne } from '../../lib/workspace/from-version-one';
import type { Session, Workspace } from '../../lib/workspace/workspace';
import { reading } from '../cohort/small-clinic';
import {
  clientsOf,
  codeOf,
  draftOf,
  file,
  FIRST,
  imported,
  newPlace,
  SECOND,
  SETTINGS,
  value,
  workspaceOn,
  type Place,
} from './workspace-on';

const HELD = file('held.csv', [
  { ...reading('a', '2025-01-06'), own_column: 'kept' },
  { ...reading('b', '2025-01-06', { weight_kg: '0' }), own_column: '=1+1' },
]);

let engine: Engine;
let place: Place;
let workspace: Workspace;
let session: Session;
beforeAll(async () => {
  engine = await openNodeEngine();
  place = newPlace();
  workspace = workspaceOn(engine, place);
  session = value(await imported(workspace, [HELD]));
});
afterAll(() => engine.close());

test('accepted rows leave with their unknown columns, and the clinic lists the file with its hash', async () => {
  const made = await workspace.exportRows();
  const text = await made.blob.text();
  expect(made.name).toBe(`driftline-rows-${session.dataVersion}.csv`);
  expect(text.split('\r\n')[0]).toMatch(/client_id.*,own_column,corrected_columns$/);
  expect(text.split('\r\n').length).toBe(3);
  const noted = value(await workspace.noteExport('rows', made, 1));
  expect(noted.exports).toEqual([
    {
      at: noted.log.at(-1)?.at,
      initials: 'AB',
      what: 'rows',
      name: made.name,
      rows: 1,
      sha256: await sha256OfBlob(made.blob),
    },
  ]);
  expect(noted.undoes?.code).toBe('imported');
});

test('the report of rows not accepted is made of the open clinic and of a preview, and of nothing else', async () => {
  const open = await (await workspace.reportOf(session.plan)).blob.text();
  expect(open).toContain('held.csv, line 3');
  const more = file('more.csv', [reading('c', '2025-01-06', { r_ohm: '-1' }), reading('c', '2025-02-06')]);
  const draft = await draftOf(workspace, [more], session.clinic.id);
  const plan = value(await workspace.plan(draft));
  const preview = await (await workspace.reportOf(plan)).blob.text();
  expect([preview.includes('more.csv, line 2'), open.includes('more.csv')]).toEqual([true, false]);
  await expect(workspace.reportOf({ ...plan, fingerprint: 'another' })).rejects.toMatchObject({
    code: 'plan_is_stale',
  });
});

test('an import goes to another clinic than the open one, and opens it', async () => {
  const demo = value(await workspace.openDemo());
  expect(demo.clinic.kind).toBe('demo');
  const grown = value(await imported(workspace, [SECOND], session.clinic.id, session.settings));
  expect([grown.clinic.id, await clientsOf(grown)]).toEqual([session.clinic.id, ['a', 'b']]);
  value(await workspace.switchTo('demo'));
  expect(codeOf(await workspace.plan(await draftOf(workspace, [FIRST], 'demo')))).toBe('unknown_clinic');
});

test('a clinic that the first version kept opens with its rows as their headings say', async () => {
  const old = newPlace();
  const sha256 = await sha256OfBlob(FIRST.blob);
  await old.store.putBlob(sha256, FIRST.blob);
  const kept = { name: 'first.csv', sha256, bytes: FIRST.blob.size, rows: 2, importedOn: '2025-12-31' };
  const manifest = {
    version: 1,
    revision: 4,
    open: 'own',
    demo: { withoutConditions: false },
    own: { settings: SETTINGS, files: [kept] },
  };
  const { clinics, lastOpen } = fromVersionOne(manifest, '2026-01-01T00:00:00.000Z');
  for (const clinic of clinics) await old.store.swap(0, clinic);
  await old.store.setLastOpen(lastOpen ?? '');
  const later = workspaceOn(engine, old);
  const opened = value(await later.open());
  expect([await clientsOf(opened), opened.files]).toEqual([
    ['a'],
    [{ name: 'first.csv', importedOn: '2025-12-31', rows: 2 }],
  ]);
  const grown = value(await imported(later, [SECOND], opened.clinic.id));
  expect([grown.cohort.summary.readings, await clientsOf(grown)]).toEqual([4, ['a', 'b']]);
  expect(await clientsOf(value(await later.erase('a')))).toEqual(['b']);
});
