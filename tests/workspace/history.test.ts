import { afterAll, beforeAll, expect, test } from 'vitest';
import { openNodeEngine } from '../../lib/engine/node';
import type { Engine } from '../../lib/engine/types';
import type { Session, Workspace } from '../../lib/workspace/workspace';
import { latestOf } from '../cohort/small-clinic';
import { clientsOf, codeOf, FIRST, imported, newPlace, SECOND, value, workspaceOn, type Place } from './workspace-on';

let engine: Engine;
let place: Place;
let workspace: Workspace;
let both: Session;
beforeAll(async () => {
  engine = await openNodeEngine();
  place = newPlace();
  workspace = workspaceOn(engine, place);
  const first = value(await imported(workspace, [FIRST]));
  both = value(await imported(workspace, [SECOND], first.clinic.id));
});
afterAll(() => engine.close());

test('an import is undone and done again, and its file stays until it leaves the history', async () => {
  expect(both.undoes?.code).toBe('imported');
  const before = value(await workspace.undo());
  expect([await clientsOf(before), before.imports.length, before.redoes?.code]).toEqual([['a'], 1, 'imported']);
  expect((await place.store.blobs()).length).toBe(2);
  const again = value(await workspace.redo());
  expect([await clientsOf(again), again.dataVersion]).toEqual([['a', 'b'], both.dataVersion]);
  expect(again.log.slice(-2).map(({ code, details }) => [code, details['what']])).toEqual([
    ['undone', 'imported'],
    ['redone', 'imported'],
  ]);
});

test('one import is taken out, and undo brings it back', async () => {
  const [first] = both.imports;
  const without = value(await workspace.removeImport(first?.id ?? ''));
  expect([await clientsOf(without), without.imports.length]).toEqual([['a', 'b'], 1]);
  expect(without.log.at(-1)).toMatchObject({ code: 'import-removed', details: { files: 'first.csv' } });
  expect(value(await workspace.undo()).imports.length).toBe(2);
});

test('a corrected cell counts at once, stands beside its row, and is taken back', async () => {
  const session = value(await workspace.open());
  const rows = await workspace.rowsOf('a');
  const row = rows.find(({ cells }) => cells['visit_date'] === '2025-08-06');
  if (row === undefined) throw new Error('no row');
  const change = { row: row.row, column: 'weight_kg', from: '80.0', to: '82.5' };
  const corrected = value(await workspace.correct([change], 'misread'));
  expect(corrected.plan.corrected).toBe(1);
  expect((await latestOf(corrected.cohort, 'a', 'weight')).valueTo).toBe(82.5);
  expect(corrected.corrections).toMatchObject([{ ...change, reason: 'misread', initials: 'AB' }]);
  expect(corrected.dataVersion).not.toBe(session.dataVersion);
  const back = value(await workspace.removeCorrection(corrected.corrections[0]?.id ?? ''));
  expect((await latestOf(back.cohort, 'a', 'weight')).valueTo).toBe(80);
  expect(back.dataVersion).toBe(session.dataVersion);
});

test('rows set aside are left out with their reason, and come back', async () => {
  const [row] = await workspace.rowsOf('b');
  if (row === undefined) throw new Error('no row');
  const without = value(await workspace.setAsideRows([row.row], 'device fault'));
  expect([await clientsOf(without), without.plan.setAside]).toEqual([['a'], 1]);
  expect(without.setAside).toMatchObject([{ row: row.row, reason: 'device fault', initials: 'AB' }]);
  expect(await clientsOf(value(await workspace.bringBack(without.setAside[0]?.id ?? '')))).toEqual(['a', 'b']);
});

test('notes, marks, retention and names change no number and need no new database', async () => {
  const before = value(await workspace.open());
  const noted = value(await workspace.writeNote('a', 'called'));
  const marked = value(await workspace.writeMark('a', 'call', 'no answer'));
  const again = value(await workspace.writeMark('a', 'call', 'reached'));
  const named = value(await workspace.renameClinic('South Clinic'));
  const kept = value(await workspace.setRetention(24));
  expect(kept.cohort).toBe(before.cohort);
  expect([noted.notes.map(({ text }) => text), marked.marks.length]).toEqual([['called'], 1]);
  expect(again.marks.map(({ value: word }) => word)).toEqual(['reached']);
  expect([named.clinic.name, kept.clinic.name]).toEqual(['South Clinic', 'South Clinic']);
  expect(value(await workspace.clinics()).map(({ name }) => name)).toEqual(['South Clinic']);
  expect([kept.keeping.keepUntil, kept.keeping.overdue]).toEqual(['2027-08-06', false]);
  expect(value(await workspace.setRetention(2)).keeping).toMatchObject({ keepUntil: '2025-10-06', overdue: true });
  expect(value(await workspace.undo()).retentionMonths).toBe(24);
  expect(value(await workspace.saveSettings(kept.settings)).log.length).toBe(value(await workspace.open()).log.length);
});

test('a change that leaves nothing to show is refused and the open clinic stays', async () => {
  const rows = [...(await workspace.rowsOf('a')), ...(await workspace.rowsOf('b'))];
  expect(
    codeOf(
      await workspace.setAsideRows(
        rows.map(({ row }) => row),
        'all',
      ),
    ),
  ).toBe('nothing_usable');
  expect((await latestOf(both.cohort, 'a', 'weight')).to).toBe('2025-08-06');
});

test('with its only import undone a clinic is empty, and redo fills it again', async () => {
  const own = workspaceOn(engine, newPlace());
  value(await imported(own, [FIRST]));
  expect(codeOf(await own.undo())).toBe('empty_clinic');
  expect(codeOf(await own.open())).toBe('empty_clinic');
  expect(codeOf(await own.undo())).toBe('nothing_to_undo');
  expect(await clientsOf(value(await own.redo()))).toEqual(['a']);
  expect(codeOf(await own.redo())).toBe('nothing_to_redo');
});
