import { afterAll, beforeAll, expect, test } from 'vitest';
import { openNodeEngine } from '../../lib/engine/node';
import type { Engine } from '../../lib/engine/types';
import type { MadeBlob, Session, Workspace } from '../../lib/workspace/workspace';
import { reading } from '../cohort/small-clinic';
import {
  clientsOf,
  codeOf,
  file,
  FIRST,
  imported,
  newPlace,
  SECOND,
  value,
  workspaceOn,
  type Place,
} from './workspace-on';

let engine: Engine;
let place: Place;
let workspace: Workspace;
let first: Session;
let made: MadeBlob;
beforeAll(async () => {
  engine = await openNodeEngine();
  place = newPlace();
  workspace = workspaceOn(engine, place);
  first = value(await imported(workspace, [FIRST, file('zoe.csv', [reading('zoe', '2025-03-03')])]));
  value(await workspace.writeNote('a', 'before the backup'));
  const backup = value(await workspace.backUp('correct horse'));
  ({ made } = backup);
  first = backup.session;
});
afterAll(() => engine.close());

const whole = { passphrase: 'correct horse', as: 'replace' } as const;

test('a backup is listed, sealed where a passphrase was given, and counts the changes since', async () => {
  expect(made.name).toBe('driftline-backup-2025-12-31.zip.age');
  expect(await workspace.isSealed(made.blob)).toBe(true);
  expect(first.keeping.lastBackup).toMatchObject({
    name: made.name,
    initials: 'AB',
    sealed: true,
    bytes: made.blob.size,
    rows: first.plan.accepted,
  });
  expect(first.plan.accepted).toBe(3);
  expect(first.keeping.changesSinceBackup).toBe(0);
  expect(value(await workspace.writeNote('a', 'after it')).keeping.changesSinceBackup).toBe(1);
});

test('a backup put in the place of the clinic brings its state, and undo brings back the one before', async () => {
  const grown = value(await imported(workspace, [SECOND], first.clinic.id));
  expect(await clientsOf(grown)).toEqual(['a', 'b', 'zoe']);
  const restored = value(await workspace.restore(made.blob, whole));
  expect([restored.clinic.id, await clientsOf(restored)]).toEqual([first.clinic.id, ['a', 'zoe']]);
  expect(restored.notes.map(({ text }) => text)).toEqual(['before the backup']);
  expect(restored.log.at(-1)?.code).toBe('restored');
  const back = value(await workspace.undo());
  expect([await clientsOf(back), back.notes.length, back.dataVersion]).toEqual([
    ['a', 'b', 'zoe'],
    2,
    grown.dataVersion,
  ]);
});

test('a wrong passphrase, a changed byte and another file are refused, and nothing changes', async () => {
  const before = await place.store.read(first.clinic.id);
  expect(codeOf(await workspace.restore(made.blob, { ...whole, passphrase: 'wrong' }))).toBe('wrong_passphrase');
  expect(codeOf(await workspace.restore(made.blob, { ...whole, passphrase: null }))).toBe('passphrase_needed');
  const bytes = new Uint8Array(await made.blob.arrayBuffer());
  const place20 = bytes.length - 20;
  bytes[place20] = (bytes[place20] ?? 0) ^ 1;
  expect(codeOf(await workspace.restore(new Blob([bytes]), whole))).toBe('damaged_backup');
  expect(codeOf(await workspace.restore(FIRST.blob, whole))).toBe('not_a_backup');
  expect(await place.store.read(first.clinic.id)).toEqual(before);
});

test('a person who was erased stays out of a restored older backup', async () => {
  value(await workspace.erase('zoe'));
  const restored = value(await workspace.restore(made.blob, whole));
  expect([await clientsOf(restored), restored.plan.erased]).toEqual([['a'], 0]);
  const texts: string[] = [];
  for (const { name } of await place.store.blobs()) texts.push((await (await place.store.getBlob(name))?.text()) ?? '');
  expect(texts.join('\n')).not.toContain('zoe');
});

test('a backup becomes a clinic beside the open one, in another browser too', async () => {
  const beside = value(await workspace.restore(made.blob, { ...whole, as: 'new' }));
  expect([beside.clinic.id === first.clinic.id, await clientsOf(beside)]).toEqual([false, ['a', 'zoe']]);
  expect(value(await workspace.clinics()).length).toBe(2);
  const elsewhere = workspaceOn(engine, newPlace());
  value(await elsewhere.open());
  const there = value(await elsewhere.restore(made.blob, whole));
  expect([there.clinic.kind, await clientsOf(there), there.backups]).toEqual(['own', ['a', 'zoe'], []]);
});
