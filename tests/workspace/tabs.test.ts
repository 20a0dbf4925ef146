import { afterAll, beforeAll, expect, test } from 'vitest';
import { openNodeEngine } from '../../lib/engine/node';
import type { Engine } from '../../lib/engine/types';
import type { Workspace } from '../../lib/workspace/workspace';
import { clientsOf, codeOf, FIRST, imported, newPlace, SECOND, value, workspaceOn, type Place } from './workspace-on';

let engine: Engine;
let other: Engine;
let place: Place;
let writer: Workspace;
let reader: Workspace;
let told = 0;
let id: string;
beforeAll(async () => {
  [engine, other] = [await openNodeEngine(), await openNodeEngine()];
  place = newPlace();
  writer = workspaceOn(engine, place);
  id = value(await imported(writer, [FIRST])).clinic.id;
  reader = workspaceOn(other, place);
  reader.setInitials('CD');
  reader.onChangedElsewhere(() => {
    told += 1;
  });
});
afterAll(async () => {
  await engine.close();
  await other.close();
});

test('the second tab reads, is told of every change, and may change nothing', async () => {
  const opened = value(await reader.open());
  expect([opened.keeping.writer, value(await writer.open()).keeping.writer]).toEqual([false, true]);
  expect(codeOf(await reader.writeNote('a', 'x'))).toBe('reader_tab');
  expect(codeOf(await imported(reader, [SECOND], id))).toBe('reader_tab');
  expect(codeOf(await reader.deleteClinic(id))).toBe('reader_tab');
  expect(told).toBe(0);
  value(await imported(writer, [SECOND], id));
  expect(told).toBe(1);
  expect(await clientsOf(value(await reader.open()))).toEqual(['a', 'b']);
});

test('a tab takes over, signs it, and the other becomes a reader', async () => {
  const taken = value(await reader.takeOver());
  expect(taken.keeping.writer).toBe(true);
  expect(taken.log.at(-1)).toMatchObject({ code: 'taken-over', initials: 'CD' });
  expect(value(await reader.writeNote('a', 'mine now')).notes.length).toBe(1);
  expect(codeOf(await writer.writeNote('a', 'x'))).toBe('reader_tab');
  expect(value(await writer.open()).notes.map(({ text }) => text)).toEqual(['mine now']);
});

test('where both believe that they write, the second is refused and nothing of the first is lost', async () => {
  const alone = workspaceOn(engine, { ...place, bus: newPlace().bus });
  value(await alone.open());
  value(await reader.writeNote('a', 'first'));
  expect(codeOf(await alone.writeNote('a', 'second'))).toBe('other_tab');
  expect(value(await alone.open()).notes.map(({ text }) => text)).toEqual(['mine now', 'first']);
  const stale = workspaceOn(engine, {
    ...place,
    bus: newPlace().bus,
    store: { ...place.store, swap: () => Promise.resolve('changed-meanwhile') },
  });
  const session = value(await stale.open());
  expect(codeOf(await stale.saveSettings({ ...session.settings, level: 80 }))).toBe('other_tab');
  expect(await clientsOf(session)).toEqual(['a', 'b']);
});

test('a database that breaks down is started anew and filled again; one that breaks down again is reported', async () => {
  const trap = Object.assign(new Error('unreachable'), { name: 'RuntimeError' });
  let traps = 0;
  let started = 0;
  const trapped: Engine = {
    ...engine,
    query: (sql, signal) => {
      if (traps === 0) return engine.query(sql, signal);
      traps -= 1;
      return Promise.reject(trap);
    },
  };
  let current: Engine | undefined;
  const tab = workspaceOn(
    engine,
    { ...place, bus: newPlace().bus },
    {
      engine: () => {
        if (current === undefined) started += 1;
        current ??= { ...trapped };
        return Promise.resolve(current);
      },
      forgetEngine: () => {
        current = undefined;
        return Promise.resolve();
      },
    },
  );
  let tellings = 0;
  tab.onChangedElsewhere(() => {
    tellings += 1;
  });
  const session = value(await tab.open());
  expect(started).toBe(1);
  traps = 1;
  expect((await tab.rowsOf('a')).length).toBe(3);
  expect(started).toBe(2);
  traps = 1;
  await expect(clientsOf(session)).rejects.toMatchObject({ code: 'engine_died' });
  expect([started, tellings]).toEqual([2, 2]);
  expect(await clientsOf(value(await tab.open()))).toEqual(['a', 'b']);
  traps = 1000;
  expect(codeOf(await tab.open())).toBe('engine_died');
  traps = 0;
  expect(await clientsOf(value(await tab.open()))).toEqual(['a', 'b']);
});
