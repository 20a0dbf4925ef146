import { afterAll, beforeAll, beforeEach, expect, test } from 'vitest';
import { openNodeEngine } from '../../lib/engine/node';
import type { Engine } from '../../lib/engine/types';
import { StorageError } from '../../lib/storage/clinic-store';
import {
  clientsOf,
  codeOf,
  copyOf,
  draftOf,
  FIRST,
  imported,
  newPlace,
  SECOND,
  value,
  workspaceOn,
  type Place,
} from './workspace-on';

let engine: Engine;
let base: Place;
let id: string;
beforeAll(async () => {
  engine = await openNodeEngine();
  base = newPlace();
  const workspace = workspaceOn(engine, base);
  id = value(await imported(workspace, [FIRST])).clinic.id;
  value(await imported(workspace, [SECOND], id));
});
afterAll(() => engine.close());

let place: Place;
beforeEach(async () => {
  place = await copyOf(base);
});

/** The clinic's manifest as it is kept, changed by hand. */
const tamper = async (change: (stored: Readonly<Record<string, unknown>>) => Readonly<Record<string, unknown>>) => {
  const stored = await place.store.read(id);
  if (stored === undefined) throw new Error('no clinic');
  await place.store.remove(id);
  const changed = change({ ...stored }) as unknown as typeof stored;
  await place.store.swap(0, changed);
  return changed;
};

test('a clinic of a newer app is left alone, and others open', async () => {
  const newer = await tamper((stored) => ({ ...stored, version: 3, body: { version: 3, more: true } }));
  const workspace = workspaceOn(engine, place);
  const opened = await workspace.open();
  expect(opened).toMatchObject({
    ok: false,
    error: { code: 'newer_manifest', message: expect.stringContaining('North Clinic') as string },
  });
  expect(codeOf(await workspace.writeNote('a', 'x'))).toBe('no_clinic');
  expect(codeOf(await workspace.switchTo(id))).toBe('newer_manifest');
  expect(codeOf(await workspace.plan(await draftOf(workspace, [SECOND], id)))).toBe('newer_manifest');
  expect(value(await workspace.openDemo()).clinic.id).toBe('demo');
  expect(await place.store.read(id)).toEqual(newer);
  expect((await place.store.blobs()).length).toBe(2);
});

test('a clinic whose manifest cannot be read is named, keeps its files, and others open', async () => {
  await tamper((stored) => ({ ...stored, body: { version: 2, kind: 'own' } }));
  const workspace = workspaceOn(engine, place);
  const opened = await workspace.open();
  expect(opened).toMatchObject({
    ok: false,
    error: { code: 'unreadable_manifest', message: expect.stringContaining('North Clinic') as string },
  });
  expect(value(await workspace.openDemo()).clinic.id).toBe('demo');
  expect((await place.store.blobs()).length).toBe(2);
});

test('a missing file is named, and the clinic opens without its import', async () => {
  const stored = value(await workspaceOn(engine, await copyOf(base)).open());
  const [first] = stored.imports;
  await place.store.removeBlob(first?.files[0]?.sha256 ?? '');
  const workspace = workspaceOn(engine, place);
  expect(await workspace.open()).toMatchObject({
    ok: false,
    error: { code: 'file_missing', message: expect.stringContaining('first.csv') as string },
  });
  expect(await workspace.damagedImports()).toEqual([{ importId: first?.id, file: 'first.csv' }]);
  const without = value(await workspace.removeImport(first?.id ?? ''));
  expect([without.files.map(({ name }) => name), await workspace.damagedImports()]).toEqual([['second.csv'], []]);
  const whole = value(await imported(workspace, [FIRST], id, without.settings));
  expect(await clientsOf(whole)).toEqual(['a', 'b']);
});

test('a clinic that does not open leaves the one before in place where it is switched to', async () => {
  const workspace = workspaceOn(engine, place);
  const own = value(await workspace.open());
  expect(codeOf(await workspace.switchTo('nowhere'))).toBe('unknown_clinic');
  expect(await clientsOf(own)).toEqual(['a', 'b']);
  expect(value(await workspace.writeNote('a', 'still here')).clinic.id).toBe(id);
});

test('storage that is denied or was cleared is said so', async () => {
  for (const [fault, code] of [
    ['denied', 'denied'],
    ['cleared', 'cleared'],
    ['newer', 'newer_app'],
    ['damaged', 'damaged'],
  ] as const) {
    const store = { ...place.store, list: () => Promise.reject(new StorageError(fault, 'no')) };
    expect(codeOf(await workspaceOn(engine, { ...place, store }).open())).toBe(code);
  }
});

test('a demo that cannot be fetched is said, and an own clinic opens all the same', async () => {
  const demo = () => Promise.reject(new Error('404'));
  expect(codeOf(await workspaceOn(engine, newPlace(), { demo }).open())).toBe('demo_missing');
  expect(value(await workspaceOn(engine, place, { demo }).open()).clinic.id).toBe(id);
});

test('clinics are deleted with their files, the demo too, and the demo comes back when asked for', async () => {
  const workspace = workspaceOn(engine, place);
  value(await workspace.openDemo());
  expect(
    value(await workspace.clinics())
      .map(({ kind }) => kind)
      .sort(),
  ).toEqual(['demo', 'own']);
  expect(value(await workspace.deleteClinic(id)).clinic.id).toBe('demo');
  expect((await place.store.blobs()).length).toBe(0);
  expect(codeOf(await workspace.deleteClinic('demo'))).toBe('no_clinic');
  expect(codeOf(await workspaceOn(engine, place).open())).toBe('no_clinic');
  const bare = value(await workspace.openDemo({ withoutConditions: true }));
  expect(bare.cohort.summary.conditionsKnown).toBe(false);
  expect(value(await workspaceOn(engine, { ...place, bus: newPlace().bus }).open()).clinic.id).toBe('demo');
});
