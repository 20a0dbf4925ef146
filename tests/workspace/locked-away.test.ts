import { afterAll, beforeAll, beforeEach, expect, test } from 'vitest';
import { openNodeEngine } from '../../lib/engine/node';
import type { Engine } from '../../lib/engine/types';
import type { Workspace } from '../../lib/workspace/workspace';
import { reading } from '../cohort/small-clinic';
import {
  clientsOf,
  codeOf,
  file,
  FIRST,
  imported,
  newPlace,
  planOf,
  SECOND,
  value,
  workspaceOn,
  type Place,
} from './workspace-on';

const ZOE = file('zoe.csv', [reading('zoe', '2025-03-03'), reading('e', '2025-03-03')]);

let engine: Engine;
let other: Engine;
beforeAll(async () => {
  [engine, other] = [await openNodeEngine(), await openNodeEngine()];
});
afterAll(async () => {
  await engine.close();
  await other.close();
});

let place: Place;
let workspace: Workspace;
let id: string;
beforeEach(async () => {
  place = newPlace();
  workspace = workspaceOn(engine, place);
  id = value(await imported(workspace, [FIRST])).clinic.id;
});

test('a sealed clinic that was left for another one asks for its passphrase again', async () => {
  value(await workspace.setPassphrase('correct horse'));
  value(await workspace.openDemo());
  expect(codeOf(await workspace.switchTo(id))).toBe('locked');
  expect(await clientsOf(value(await workspace.unlock('correct horse')))).toEqual(['a']);
});

test('a tab that followed while its clinic was sealed elsewhere forgets what its database holds', async () => {
  let ended = 0;
  const forgetEngine = (): Promise<void> => {
    ended += 1;
    return Promise.resolve();
  };
  const reader = workspaceOn(other, place, { forgetEngine });
  value(await reader.open());
  value(await workspace.setPassphrase('correct horse'));
  expect([codeOf(await reader.open()), ended]).toEqual(['locked', 1]);
  expect([codeOf(await reader.open()), ended]).toEqual(['locked', 1]);
});

test('a tab with the key of an earlier seal asks for the new passphrase', async () => {
  value(await workspace.setPassphrase('correct horse'));
  const reader = workspaceOn(other, place);
  await reader.open();
  value(await reader.unlock('correct horse'));
  value(await workspace.setPassphrase(null));
  value(await workspace.setPassphrase('battery staple'));
  expect(codeOf(await reader.open())).toBe('locked');
  expect(await clientsOf(value(await reader.unlock('battery staple')))).toEqual(['a']);
});

test('what was planned for a clinic is forgotten with its key', async () => {
  value(await workspace.setPassphrase('correct horse'));
  const { plan, commit } = await planOf(workspace, [SECOND], id);
  await workspace.lock();
  await expect(workspace.reportOf(plan)).rejects.toThrow();
  expect(codeOf(await commit())).toBe('plan_is_stale');
});

test('a backup that says a person was erased takes the person out of the way back too', async () => {
  const there = workspaceOn(other, newPlace());
  expect(await clientsOf(value(await imported(workspace, [ZOE], id)))).toEqual(['a', 'e', 'zoe']);
  value(await workspace.writeNote('zoe', 'about her'));
  const made = value(await workspace.backUp(null)).made;
  value(await there.restore(made.blob, { passphrase: null, as: 'new' }));
  value(await there.erase('zoe'));
  const without = value(await there.backUp(null)).made;
  value(await workspace.writeNote('a', 'later'));
  const restored = value(await workspace.restore(without.blob, { passphrase: null, as: 'replace' }));
  expect(await clientsOf(restored)).toEqual(['a', 'e']);
  const texts = [JSON.stringify(await place.store.read(id))];
  for (const { name } of await place.store.blobs()) texts.push((await (await place.store.getBlob(name))?.text()) ?? '');
  expect(texts.join('\n')).not.toMatch(/"zoe"|,zoe,|about her/);
  const back = value(await workspace.undo());
  expect([await clientsOf(back), back.notes.map(({ text }) => text)]).toEqual([['a', 'e'], ['later']]);
});

test('an erasure names the workspace file that may hold the person', async () => {
  value(await imported(workspace, [ZOE], id));
  const made = value(await workspace.saveShared(null)).made;
  expect(value(await workspace.erase('zoe')).erasures[0]?.backups).toEqual([made.name]);
});
