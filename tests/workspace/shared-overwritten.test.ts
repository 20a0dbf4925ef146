import { afterAll, beforeAll, expect, test } from 'vitest';
import { openNodeEngine } from '../../lib/engine/node';
import type { Engine } from '../../lib/engine/types';
import type { MadeBlob, Workspace } from '../../lib/workspace/workspace';
import { FIRST, imported, newPlace, value, workspaceOn } from './workspace-on';

let engine: Engine;
let here: Workspace;
let there: Workspace;
beforeAll(async () => {
  engine = await openNodeEngine();
  here = workspaceOn(engine, newPlace());
  there = workspaceOn(engine, newPlace());
  value(await imported(here, [FIRST]));
  const { made } = value(await here.saveShared(null));
  value(await there.restore(made.blob, { passphrase: null, as: 'new' }));
  value(await merged(there, made));
});
afterAll(() => engine.close());

const merged = (workspace: Workspace, made: MadeBlob) =>
  workspace.merge(made.blob, { name: 'clinic.driftline', passphrase: null, choices: {} });

const texts = (session: { readonly notes: readonly { readonly text: string }[] }): readonly string[] =>
  session.notes.map(({ text }) => text).sort();

test('what was saved into the shared file and overwritten by somebody who never saw it is not taken out here', async () => {
  value(await here.writeNote('a', 'from here'));
  value(await here.saveShared(null));
  value(await there.writeNote('a', 'from there'));
  const overwritten = value(await there.saveShared(null)).made;
  expect(value(await here.previewMerge(overwritten.blob, null)).incoming).toEqual({ notes: 1 });
  expect(texts(value(await merged(here, overwritten)))).toEqual(['from here', 'from there']);
});

test('what was saved and never reached the shared folder is not taken out by the file that lies there', async () => {
  const lying = value(await here.saveShared(null)).made;
  value(await here.writeNote('a', 'not written'));
  value(await here.saveShared(null));
  expect(texts(value(await merged(here, lying)))).toEqual(['from here', 'from there', 'not written']);
});

test('what somebody took out who saw it is taken out here, and undoing a merge takes nothing out anywhere', async () => {
  value(await here.setRetention(24));
  const { made } = value(await here.saveShared(null));
  const both = value(await merged(there, made));
  expect([texts(both), both.retentionMonths]).toEqual([['from here', 'from there', 'not written'], 24]);
  value(await there.undo());
  const without = value(await there.saveShared(null)).made;
  expect(value(await merged(here, without)).retentionMonths).toBe(24);
  value(await merged(there, value(await here.saveShared(null)).made));
  value(await there.setRetention(null));
  expect(value(await merged(here, value(await there.saveShared(null)).made)).retentionMonths).toBe(null);
});
