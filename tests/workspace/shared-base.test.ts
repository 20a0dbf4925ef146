import { expect, test } from 'vitest';
import { DEFAULT_SETTINGS } from '../../lib/cohort/settings';
import type { ClinicBody, LogEntry } from '../../lib/workspace/clinic-state';
import { changed, HISTORY_LIMIT, undone } from '../../lib/workspace/history';
import { mergeStates } from '../../lib/workspace/merge-states';
import { newClinic } from '../../lib/workspace/new-clinic';
import { sharedBase } from '../../lib/workspace/shared-base';

const entry = (code: LogEntry['code']): LogEntry => ({
  at: '2026-01-05T08:00:00.000Z',
  initials: 'AB',
  code,
  details: {},
});
const note = (id: string) => ({ id, client: 'c', text: id, initials: 'AB', at: '2026-01-05T08:00:00.000Z' });

const START: ClinicBody = newClinic('own', DEFAULT_SETTINGS, entry('started'));

const undoneOnce = (body: ClinicBody): ClinicBody => {
  const back = undone(body, () => entry('undone'));
  if (back === undefined) throw new Error('nothing to undo');
  return back;
};

test('a merge that was undone is no removal: the next merge brings the other side’s notes again', () => {
  const theirs = { ...START.state, notes: [note('theirs')] };
  const shared = { name: 'file', at: '', lastWriter: 'CD', base: theirs, versions: ['v1'] };
  const merged = changed({ ...START, shared }, theirs, entry('merged'));
  expect(mergeStates(sharedBase(merged, ['v1']), merged.state, theirs, {}).state.notes.length).toBe(1);
  const back = undoneOnce(merged);
  expect([back.state.notes, back.shared?.lastWriter]).toEqual([[], 'CD']);
  expect(mergeStates(sharedBase(back, ['v1']), back.state, theirs, {}).state.notes).toEqual([note('theirs')]);
});

test('a note that was undone after the file was saved is a removal', () => {
  const noted = changed(START, { ...START.state, notes: [note('mine')] }, entry('note-written'));
  const saved = { ...noted, shared: { name: 'file', at: '', lastWriter: 'AB', base: noted.state, versions: ['v1'] } };
  const back = undoneOnce(saved);
  expect(mergeStates(sharedBase(back, ['v1']), back.state, noted.state, {}).state.notes).toEqual([]);
});

test('nothing is taken out by somebody who never had what was saved here', () => {
  const saved = {
    ...START,
    shared: { name: 'file', at: '', lastWriter: 'AB', base: START.state, versions: ['v1', 'v2'] },
  };
  const mine = { ...START.state, notes: [note('mine')] };
  const body = { ...saved, shared: { ...saved.shared, base: mine } };
  const merge = (theirs: readonly string[]) => mergeStates(sharedBase(body, theirs), mine, START.state, {}).state.notes;
  expect([merge(['v1', 'v3']).length, merge(['v1', 'v2', 'v3']).length, merge([]).length]).toEqual([1, 0, 1]);
});

test('without a state in common, what both sides set differently is asked and nothing is taken out', () => {
  const mine = { ...START.state, settings: { ...DEFAULT_SETTINGS, level: 80 as const }, notes: [note('mine')] };
  const theirs = { ...START.state, settings: { ...DEFAULT_SETTINGS, level: 90 as const }, notes: [note('theirs')] };
  const { state, conflicts } = mergeStates(sharedBase(START, ['v1']), mine, theirs, {});
  expect(conflicts.map(({ path }) => path)).toEqual(['settings.level']);
  expect(state.notes.length).toBe(2);
});

test('the history goes back over fifty states and no further', () => {
  let body = START;
  for (let step = 0; step < HISTORY_LIMIT + 5; step += 1)
    body = changed(body, { ...body.state, retentionMonths: step + 1 }, entry('retention-set'));
  expect(body.past.length).toBe(50);
  for (let step = 0; step < HISTORY_LIMIT; step += 1) body = undoneOnce(body);
  expect([body.state.retentionMonths, undone(body, () => entry('undone'))]).toEqual([5, undefined]);
});
