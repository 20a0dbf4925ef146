import { afterAll, beforeAll, expect, test } from 'vitest';
import { openNodeEngine } from '../../lib/engine/node';
import type { Engine } from '../../lib/engine/types';
import type { Session, Workspace } from '../../lib/workspace/workspace';
import { clientsOf, codeOf, FIRST, imported, newPlace, SECOND, value, workspaceOn, type Place } from './workspace-on';

let engine: Engine;
let place: Place;
let workspace: Workspace;
let ended = 0;
let session: Session;
beforeAll(async () => {
  engine = await openNodeEngine();
  place = newPlace();
  workspace = workspaceOn(engine, place, {
    forgetEngine: () => {
      ended += 1;
      return Promise.resolve();
    },
  });
  value(await imported(workspace, [FIRST]));
  session = value(await workspace.setPassphrase('correct horse'));
});
afterAll(() => engine.close());

const keptTexts = async (): Promise<string> => {
  const texts = [JSON.stringify(await place.store.read(session.clinic.id))];
  for (const { name } of await place.store.blobs()) texts.push((await (await place.store.getBlob(name))?.text()) ?? '');
  return texts.join('\n');
};

test('a sealed clinic keeps neither rows nor settings in the open', async () => {
  expect([session.clinic.sealed, session.keeping.sealed, session.log.at(-1)?.code]).toEqual([true, true, 'sealed']);
  const text = await keptTexts();
  expect(text).not.toMatch(/visit_date|leanMeasure|first\.csv/);
  expect(text).toContain('North Clinic');
  expect((await place.store.blobs()).map(({ name }) => name.endsWith('.age'))).toEqual([true]);
});

test('a sealed clinic works as an open one: changes, imports and undo', async () => {
  const noted = value(await workspace.writeNote('a', 'sealed note'));
  const grown = value(await imported(workspace, [SECOND], noted.clinic.id));
  expect(await clientsOf(grown)).toEqual(['a', 'b']);
  expect(await clientsOf(value(await workspace.undo()))).toEqual(['a']);
  expect(await keptTexts()).not.toContain('sealed note');
});

test('locked it opens only with its passphrase, and what the database held is gone', async () => {
  const before = ended;
  await workspace.lock();
  expect(ended).toBe(before + 1);
  expect(codeOf(await workspace.open())).toBe('locked');
  expect(codeOf(await workspace.writeNote('a', 'no'))).toBe('locked');
  expect(codeOf(await workspace.unlock('wrong'))).toBe('wrong_passphrase');
  const unlocked = value(await workspace.unlock('correct horse'));
  expect([await clientsOf(unlocked), unlocked.notes.map(({ text }) => text)]).toEqual([['a'], ['sealed note']]);
});

test('another tab and the next start ask for the passphrase, and other clinics open meanwhile', async () => {
  const later = workspaceOn(engine, { ...place, bus: newPlace().bus });
  expect(codeOf(await later.open())).toBe('locked');
  expect(value(await later.clinics())).toMatchObject([{ name: 'North Clinic', sealed: true }]);
  expect(value(await later.openDemo()).clinic.id).toBe('demo');
  expect(codeOf(await later.switchTo(session.clinic.id))).toBe('locked');
  expect(await clientsOf(value(await later.unlock('correct horse')))).toEqual(['a']);
});

test('the passphrase is changed, and the old one no longer opens', async () => {
  value(await workspace.setPassphrase('battery staple'));
  await workspace.lock();
  expect(codeOf(await workspace.unlock('correct horse'))).toBe('wrong_passphrase');
  expect(value(await workspace.unlock('battery staple')).log.at(-1)?.code).toBe('passphrase-changed');
});

test('a person is erased from a sealed clinic too', async () => {
  expect(codeOf(await workspace.erase('nobody'))).toBe('unknown_client');
  const both = value(await workspace.redo());
  const names = (await place.store.blobs()).map(({ name }) => name);
  expect(await clientsOf(value(await workspace.erase('b')))).toEqual(['a']);
  const kept = (await place.store.blobs()).map(({ name }) => name);
  expect([both.imports.length, names.length, kept.length, kept.every((name) => names.includes(name))]).toEqual([
    2,
    2,
    2,
    false,
  ]);
});

test('unsealed it lies open again, and sealed files are gone', async () => {
  const open = value(await workspace.setPassphrase(null));
  expect([open.clinic.sealed, open.log.at(-1)?.code]).toEqual([false, 'unsealed']);
  expect((await place.store.blobs()).map(({ name }) => name.endsWith('.age'))).toEqual([false, false]);
  expect(await clientsOf(value(await workspaceOn(engine, { ...place, bus: newPlace().bus }).open()))).toEqual(['a']);
});
