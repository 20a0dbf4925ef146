import { unzipSync, strFromU8 } from 'fflate';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { settingsSchema } from '../../lib/cohort/settings';
import { openNodeEngine } from '../../lib/engine/node';
import type { Engine } from '../../lib/engine/types';
import type { MadeBlob, Workspace } from '../../lib/workspace/workspace';
import { reading } from '../cohort/small-clinic';
import { clientsOf, codeOf, file, imported, newPlace, planOf, value, workspaceOn, type Place } from './workspace-on';

const SETTINGS = settingsSchema.parse({
  clinic: { name: 'North Clinic' },
  answers: [
    { kind: 'same-client', ids: ['Zoe-1'], client: 'zoe' },
    { kind: 'sex-for-equations', client: 'zoe', sex: 'F' },
    { kind: 'sex-for-equations', client: 'a', sex: 'M' },
  ],
  enrolments: [
    { client: 'Zoe-1', program: 'Walking', start: '2025-01-06', end: '2025-09-01', endReason: 'moved' },
    { client: 'a', program: 'Evenings', start: '2025-02-01' },
  ],
});

const MIXED = file('mixed.csv', [
  reading('a', '2025-01-06'),
  reading('zoe', '2025-01-06', { family_name: 'Zimmer' }),
  reading('a', '2025-06-06'),
  reading('Zoe-1', '2025-06-06', { family_name: 'Zimmer' }),
]);
const OTHER = file('other.csv', [reading('a', '2025-08-06'), reading('c', '2025-08-06')]);

let engine: Engine;
let place: Place;
let workspace: Workspace;
beforeAll(async () => {
  engine = await openNodeEngine();
  place = newPlace();
  workspace = workspaceOn(engine, place);
  const first = value(await imported(workspace, [MIXED], 'new', SETTINGS));
  value(await imported(workspace, [OTHER], first.clinic.id, SETTINGS));
});
afterAll(() => engine.close());

/** The kept files, as text. */
const keptFiles = async (): Promise<string> => {
  const texts: string[] = [];
  for (const { name } of await place.store.blobs()) texts.push((await (await place.store.getBlob(name))?.text()) ?? '');
  return texts.join('\n');
};

/** Everything that is kept, as text. */
const allKept = async (): Promise<string> => {
  const clinics: unknown[] = [];
  for (const { id } of await place.store.list()) clinics.push(await place.store.read(id));
  return `${JSON.stringify(clinics)}\n${await keptFiles()}`;
};

const entriesOf = async ({ blob }: MadeBlob): Promise<Readonly<Record<string, string>>> =>
  Object.fromEntries(
    Object.entries(unzipSync(new Uint8Array(await blob.arrayBuffer()))).map(([name, bytes]) => [
      name,
      strFromU8(bytes),
    ]),
  );

test('everything about one person is one file whose name says nobody’s', async () => {
  const rows = await workspace.rowsOf('zoe');
  const [first] = rows;
  if (first === undefined) throw new Error('no row');
  value(await workspace.correct([{ row: first.row, column: 'weight_kg', from: '80.0', to: '81' }], 'slip'));
  value(await workspace.setAsideRows([first.row], 'test reading'));
  value(await workspace.writeNote('zoe', 'asked for her data'));
  value(await workspace.writeNote('a', 'of another client'));
  value(await workspace.writeMark('zoe', 'call', 'reached'));
  const made = value(await workspace.everythingAbout('zoe'));
  expect(made.name).toMatch(/^driftline-one-client-2025-12-31\.zip$/);
  const files = await entriesOf(made);
  expect(Object.keys(files).sort()).toEqual([
    'answers.csv',
    'corrections.csv',
    'enrolments.csv',
    'log.csv',
    'marks.csv',
    'notes.csv',
    'readme.txt',
    'rows.csv',
    'set-aside.csv',
  ]);
  const lines = files['rows.csv']?.trim().split('\r\n') ?? [];
  expect(lines.map((line) => line.split(',').slice(0, 3).join(' '))).toEqual([
    'file line status',
    'mixed.csv 3 set-aside',
    'mixed.csv 5 accepted',
  ]);
  expect(files['notes.csv']).toContain('asked for her data');
  expect(files['corrections.csv']).toContain('mixed.csv,3,weight_kg,80.0,81,slip');
  expect(files['answers.csv']).toContain('same-client');
  expect(files['enrolments.csv']?.trim().split('\r\n').slice(1)).toEqual([
    'Zoe-1,Walking,2025-01-06,2025-09-01,moved,',
  ]);
  expect(files['log.csv']?.match(/corrected|set-aside|note-written|mark-written|imported/g)).toEqual([
    'imported',
    'corrected',
    'set-aside',
    'note-written',
    'mark-written',
  ]);
  expect(JSON.stringify(files)).not.toContain('of another client');
  expect(codeOf(await workspace.everythingAbout('nobody'))).toBe('unknown_client');
});

test('an erased person is gone from files, settings, notes, corrections and history, under every spelling', async () => {
  value(await workspace.backUp(null));
  const blobsBefore = (await place.store.blobs()).map(({ name }) => name);
  const before = value(await workspace.open());
  expect(await clientsOf(before)).toEqual(['a', 'c', 'zoe']);
  const session = value(await workspace.erase('zoe'));
  expect(await clientsOf(session)).toEqual(['a', 'c']);
  expect([session.undoes, session.redoes, session.notes.map(({ client }) => client)]).toEqual([null, null, ['a']]);
  expect([session.corrections, session.setAside, session.marks]).toEqual([[], [], []]);
  expect(session.settings.answers).toEqual([{ kind: 'sex-for-equations', client: 'a', sex: 'M' }]);
  expect(session.settings.enrolments.map(({ client }) => client)).toEqual(['a']);
  expect(await allKept()).not.toMatch(/zoe|Zimmer|asked for her/i);
  const kept = (await place.store.blobs()).map(({ name }) => name);
  expect([kept.length, kept.filter((name) => blobsBefore.includes(name)).length]).toEqual([2, 1]);
  expect(session.imports[0]?.files[0]).toMatchObject({
    name: 'mixed.csv',
    givenAs: before.imports[0]?.files[0]?.sha256,
  });
  expect(session.imports[1]).toEqual(before.imports[1]);
});

test('the log says that a person was erased, and which backups were made before, never who', async () => {
  const session = value(await workspace.open());
  expect(session.log.at(-1)).toMatchObject({ code: 'erased', initials: 'AB', details: {} });
  expect(session.erasures).toEqual([
    { at: session.log.at(-1)?.at, initials: 'AB', backups: [expect.stringMatching(/^driftline-backup-.*\.zip$/)] },
  ]);
});

test('the rows that stay keep their lines', async () => {
  const rows = await workspace.rowsOf('a');
  expect(rows.map(({ file: name, row }) => [name, row.line])).toEqual([
    ['mixed.csv', 2],
    ['mixed.csv', 4],
    ['other.csv', 2],
  ]);
});

test('rows of an erased person that come again stay out, are counted, and are not kept', async () => {
  const { clinic } = value(await workspace.open());
  const again = file('again.csv', [
    reading('zoe', '2025-09-06'),
    reading('d', '2025-09-06'),
    reading('Zoe-1', '2025-10-06'),
  ]);
  const { plan, commit } = await planOf(workspace, [again], clinic.id, SETTINGS);
  expect([plan.erased, plan.accepted]).toEqual([2, 5]);
  const session = value(await commit());
  expect(await clientsOf(session)).toEqual(['a', 'c', 'd']);
  expect(await keptFiles()).not.toMatch(/zoe/i);
  const same = await planOf(workspace, [again], clinic.id, session.settings);
  expect([same.plan.erased, same.plan.duplicates]).toEqual([2, 1]);
});

test('a person of the demo is erased too, although its file comes from the site', async () => {
  value(await workspace.openDemo());
  expect(codeOf(await workspace.erase('somebody else'))).toBe('unknown_client');
  expect(codeOf(await workspace.erase('d'))).toBe('empty_clinic');
  expect(codeOf(await workspaceOn(engine, place).open())).toBe('empty_clinic');
  expect(await clientsOf(value(await workspace.openDemo()))).toEqual(['d']);
});
