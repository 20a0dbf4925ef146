import { afterAll, beforeAll, beforeEach, expect, test } from 'vitest';
import type { Engine } from '../../lib/engine/types';
import type { ClinicStore } from '../../lib/storage/clinic-store';
import type { Workspace } from '../../lib/workspace/workspace';
import { openNodeEngine } from '../../lib/engine/node';
import { latestOf, reading } from '../cohort/small-clinic';
import {
  clientsOf,
  codeOf,
  draftOf,
  file,
  FIRST,
  imported,
  newPlace,
  planOf,
  SECOND,
  SETTINGS,
  TODAY,
  value,
  workspaceOn,
  type Place,
} from './workspace-on';

let engine: Engine;
beforeAll(async () => {
  engine = await openNodeEngine();
});
afterAll(() => engine.close());

let place: Place;
let workspace: Workspace;
beforeEach(() => {
  place = newPlace();
  workspace = workspaceOn(engine, place);
});

test('the first start opens the demo clinic', async () => {
  const session = value(await workspace.open());
  expect(session.clinic).toEqual({ id: 'demo', kind: 'demo', name: 'Demo', invented: true, sealed: false });
  expect(await clientsOf(session)).toEqual(['d']);
  expect(session.log.map(({ code, initials }) => [code, initials])).toEqual([['started', 'AB']]);
});

test('a plan changes nothing, a commit keeps the clinic, a new start shows it', async () => {
  const demo = value(await workspace.open());
  const { plan, commit } = await planOf(workspace, [FIRST]);
  expect([plan.rows, plan.accepted]).toEqual([2, 2]);
  expect([await clientsOf(demo), (await place.store.list()).length, (await place.store.blobs()).length]).toEqual([
    ['d'],
    1,
    0,
  ]);
  const session = value(await commit());
  expect(session).toMatchObject({ clinic: { kind: 'own', name: 'North Clinic', invented: false }, waiting: 0 });
  const again = value(await workspaceOn(engine, { ...place, bus: newPlace().bus }).open());
  expect([again.clinic.id, again.dataVersion]).toEqual([session.clinic.id, session.dataVersion]);
  expect(again.files).toEqual([{ name: 'first.csv', importedOn: TODAY, rows: 2 }]);
  expect(again.log.map(({ code, details }) => [code, details])).toEqual([
    ['started', {}],
    ['imported', { files: 'first.csv', rows: 2 }],
  ]);
  expect(await clientsOf(again)).toEqual(['a']);
});

test('a second file joins the first, and what it changed is told once', async () => {
  const first = value(await imported(workspace, [FIRST]));
  expect(first.difference).toBeNull();
  const both = value(await imported(workspace, [SECOND], first.clinic.id));
  expect([both.cohort.summary.readings, await clientsOf(both), both.imports.length]).toEqual([4, ['a', 'b'], 2]);
  expect(both.difference).toEqual({ visits: 2, newClients: 1, changedResults: 0, toTalkTo: 0, newToTalkTo: [] });
  expect(value(await workspace.open()).difference).toBeNull();
  expect(both.dataVersion).not.toBe(first.dataVersion);
});

test('the same file twice brings no new row and says so', async () => {
  const first = value(await imported(workspace, [FIRST]));
  const { plan, commit } = await planOf(workspace, [FIRST], first.clinic.id);
  expect([plan.accepted, plan.duplicates]).toEqual([2, 2]);
  const same = value(await commit());
  expect([same.cohort.summary.readings, same.imports.length, same.dataVersion]).toEqual([2, 1, first.dataVersion]);
  expect(same.log).toEqual(first.log);
});

test('several files come as one import, and those that cannot be read are named', async () => {
  const broken = { name: 'picture.csv', blob: new Blob([new Uint8Array([0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10])]) };
  const { plan, commit } = await planOf(workspace, [FIRST, broken, SECOND]);
  expect(plan.failedFiles.map(({ name }) => name)).toEqual(['picture.csv']);
  const session = value(await commit());
  expect(session.imports.map(({ files }) => files.map(({ name }) => name))).toEqual([['first.csv', 'second.csv']]);
});

test('a mapping is remembered for its header, and can be forgotten', async () => {
  const odd = { name: 'odd.csv', blob: new Blob(['Client;Date;Weight (lb)\na;06.01.2025;176\na;13.06.2025;180\n']) };
  const draft = await draftOf(workspace, [odd]);
  const [table] = draft.tables;
  if (table === undefined) throw new Error('no table');
  const columns = table.mapping.columns.map((column) =>
    column.to === 'weight_kg' ? { ...column, unit: 'kg' as const } : column,
  );
  const decided = { ...draft, tables: [{ ...table, mapping: { ...table.mapping, columns } }] };
  const plan = value(await workspace.plan(decided));
  const session = value(await workspace.commit(plan, decided));
  expect(session.mappings.map(({ header }) => header)).toEqual([['Client', 'Date', 'Weight (lb)']]);
  const readAgain = value(await workspace.read([odd], session.clinic.id));
  expect(readAgain.files[0]?.tables[0]).toMatchObject({ remembered: true, mapping: { columns } });
  const forgotten = value(await workspace.forgetMapping(['Client', 'Date', 'Weight (lb)']));
  expect(forgotten.mappings).toEqual([]);
  expect(value(await workspace.read([odd], session.clinic.id)).files[0]?.tables[0]?.remembered).toBe(false);
});

test('no file, no used table, a stale plan and nothing usable are each said, and change nothing', async () => {
  const session = value(await imported(workspace, [FIRST]));
  expect(codeOf(await workspace.read([], 'new'))).toBe('no_files');
  const draft = await draftOf(workspace, [SECOND], session.clinic.id);
  expect(codeOf(await workspace.plan({ ...draft, tables: [] }))).toBe('no_tables');
  const plan = value(await workspace.plan(draft));
  value(await workspace.setRetention(24));
  expect(codeOf(await workspace.commit(plan, draft))).toBe('plan_is_stale');
  expect(codeOf(await workspaceOn(engine, newPlace()).commit(plan, draft))).toBe('plan_is_stale');
  const refused = file('refused.csv', [reading('x', '2025-01-06', { r_ohm: '0' })]);
  expect(codeOf(await imported(workspace, [refused]))).toBe('nothing_usable');
  const after = value(await workspace.open());
  expect([after.clinic.id, await clientsOf(session)]).toEqual([session.clinic.id, ['a']]);
  expect((await latestOf(session.cohort, 'a', 'weight')).to).toBe('2025-06-06');
  expect((await place.store.list()).length).toBe(1);
  expect((await place.store.blobs()).length).toBe(1);
});

test('settings given with an import are kept with it', async () => {
  const session = value(await imported(workspace, [FIRST], 'new', { ...SETTINGS, level: 80 }));
  expect(session.settings.level).toBe(80);
});

test('the first import of a clinic asks the browser not to clear it; the answer stands with the room', async () => {
  let asked = 0;
  const store: ClinicStore = {
    ...place.store,
    room: async () => ({ ...(await place.store.room()), persisted: asked > 0 }),
    persist: () => {
      asked += 1;
      return Promise.resolve(true);
    },
  };
  const own = workspaceOn(engine, { ...place, store, bus: newPlace().bus });
  expect([value(await own.open()).keeping.room.persisted, asked]).toEqual([false, 0]);
  const first = value(await imported(own, [FIRST]));
  expect([first.keeping.room.persisted, asked]).toEqual([true, 1]);
  value(await imported(own, [SECOND], first.clinic.id));
  expect(asked).toBe(1);
});
