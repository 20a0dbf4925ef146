import { afterAll, beforeAll, expect, test } from 'vitest';
import { openNodeEngine } from '../../lib/engine/node';
import type { Engine } from '../../lib/engine/types';
import { sha256OfBlob } from '../../lib/storage/sha256-of-blob';
import type { MadeBlob, Workspace } from '../../lib/workspace/workspace';
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

const ZOE = file('zoe.csv', [reading('zoe', '2025-03-03'), reading('e', '2025-03-03')]);
const NAME = 'clinic.driftline';

let engine: Engine;
let here: Workspace;
let there: Workspace;
let placeHere: Place;
let placeThere: Place;
let id: string;
let shared: MadeBlob;
beforeAll(async () => {
  engine = await openNodeEngine();
  placeHere = newPlace();
  here = workspaceOn(engine, placeHere);
  placeThere = newPlace();
  there = workspaceOn(engine, placeThere);
  there.setInitials('CD');
  id = value(await imported(here, [FIRST, ZOE])).clinic.id;
  value(await here.writeNote('a', 'common'));
  shared = value(await here.saveShared(null)).made;
  value(await there.restore(shared.blob, { passphrase: null, as: 'new' }));
});
afterAll(() => engine.close());

const merge = (workspace: Workspace, made: MadeBlob, choices: Readonly<Record<string, 'mine' | 'theirs'>> = {}) =>
  workspace.merge(made.blob, { name: NAME, passphrase: null, choices });

test('a workspace file of the state in common brings nothing', async () => {
  const preview = value(await here.previewMerge(shared.blob, null));
  expect(preview).toMatchObject({ lastWriter: 'AB', incoming: {}, outgoing: {}, conflicts: [] });
});

test('every saved workspace file is listed with its rows, hash and initials', async () => {
  const { exports, log, plan } = value(await here.open());
  const [noted] = exports;
  expect([exports.length, noted]).toEqual([
    1,
    {
      at: log.at(-1)?.at,
      initials: 'AB',
      what: 'workspace',
      name: shared.name,
      rows: plan.accepted,
      sha256: await sha256OfBlob(shared.blob),
    },
  ]);
});

test('imports, notes and settings of two computers come together, the last writer is named, and undo takes it back', async () => {
  const mine = value(await here.open());
  value(await here.saveSettings({ ...mine.settings, level: 80 }));
  value(await here.writeNote('a', 'from here'));
  const theirs = value(await merge(there, shared));
  value(await imported(there, [SECOND], theirs.clinic.id, theirs.settings));
  value(await there.writeNote('b', 'from there'));
  const fromThere = value(await there.saveShared(null)).made;
  expect(value(await here.previewMerge(fromThere.blob, null))).toMatchObject({
    lastWriter: 'CD',
    incoming: { imports: 1, notes: 1 },
    outgoing: { settings: 1, notes: 1 },
    conflicts: [],
  });
  const both = value(await merge(here, fromThere));
  expect([await clientsOf(both), both.settings.level]).toEqual([['a', 'b', 'e', 'zoe'], 80]);
  expect(both.notes.map(({ text }) => text)).toEqual(['common', 'from here', 'from there']);
  expect(both.keeping.shared).toMatchObject({ name: NAME, lastWriter: 'CD' });
  expect(both.log.at(-1)).toMatchObject({ code: 'merged', initials: 'AB' });
  expect(await clientsOf(value(await here.undo()))).toEqual(['a', 'e', 'zoe']);
  expect(await clientsOf(value(await here.redo()))).toEqual(['a', 'b', 'e', 'zoe']);
  shared = value(await here.saveShared(null)).made;
  expect(await clientsOf(value(await merge(there, shared)))).toEqual(['a', 'b', 'e', 'zoe']);
});

test('what both changed is asked place by place, and not merged before it is answered', async () => {
  const mine = value(await here.open());
  value(await here.saveSettings({ ...mine.settings, level: 90, checkUpsProgram: 'Here' }));
  const theirs = value(await there.open());
  value(await there.saveSettings({ ...theirs.settings, level: 95, checkUpsProgram: 'There' }));
  const fromThere = value(await there.saveShared(null)).made;
  const { conflicts } = value(await here.previewMerge(fromThere.blob, null));
  expect(conflicts).toEqual([
    { path: 'settings.level', base: '80', mine: '90', theirs: '95' },
    { path: 'settings.checkUpsProgram', base: 'Check-ups only', mine: 'Here', theirs: 'There' },
  ]);
  expect(codeOf(await merge(here, fromThere, { 'settings.level': 'mine' }))).toBe('merge_conflicts');
  expect(value(await here.open()).settings.level).toBe(90);
  const choices = { 'settings.level': 'theirs', 'settings.checkUpsProgram': 'mine' } as const;
  const both = value(await merge(here, fromThere, choices));
  expect([both.settings.level, both.settings.checkUpsProgram]).toEqual([95, 'Here']);
});

test('a person erased on one computer is erased on the other by the merge, from files and history', async () => {
  expect(value(await here.writeNote('zoe', 'about zoe')).notes.length).toBe(4);
  shared = value(await here.saveShared(null)).made;
  value(await here.erase('zoe'));
  const fromHere = value(await here.saveShared(null)).made;
  const merged = value(await merge(there, fromHere));
  expect([await clientsOf(merged), merged.undoes, merged.erasures.length]).toEqual([['a', 'b', 'e'], null, 1]);
  const texts: string[] = [];
  for (const { name } of await placeThere.store.blobs())
    texts.push((await (await placeThere.store.getBlob(name))?.text()) ?? '');
  expect(texts.join('\n')).not.toContain('zoe');
  const again = value(await imported(there, [ZOE], merged.clinic.id, merged.settings));
  expect(await clientsOf(again)).toEqual(['a', 'b', 'e']);
});

test('a file that still holds an erased person does not bring them back', async () => {
  const older = shared;
  const mine = value(await here.open());
  const { conflicts } = value(await here.previewMerge(older.blob, null));
  const choices = Object.fromEntries(conflicts.map(({ path }) => [path, 'mine' as const]));
  const merged = value(await merge(here, older, choices));
  expect([await clientsOf(merged), merged.clinic.id]).toEqual([await clientsOf(mine), id]);
  expect(JSON.stringify(await placeHere.store.read(id))).not.toContain('zoe"');
});

test('a wrong passphrase and another file are refused', async () => {
  const sealed = value(await here.saveShared('correct horse')).made;
  expect(sealed.name).toMatch(/^driftline-workspace-.*\.zip\.age$/);
  expect(codeOf(await here.previewMerge(sealed.blob, 'wrong'))).toBe('wrong_passphrase');
  expect(codeOf(await merge(here, { name: 'x', blob: FIRST.blob }))).toBe('not_a_backup');
});
