import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { openNodeEngine } from '../../lib/engine/node';
import type { Engine } from '../../lib/engine/types';
import { StorageError, type ClinicStore } from '../../lib/storage/clinic-store';
import { reading } from '../cohort/small-clinic';
import { clientsOf, codeOf, file, FIRST, imported, newPlace, value, workspaceOn, type Place } from './workspace-on';

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
beforeEach(() => {
  place = newPlace();
});

const keptTexts = async (): Promise<string> => {
  const texts: string[] = [];
  for (const { name } of await place.store.blobs()) texts.push((await (await place.store.getBlob(name))?.text()) ?? '');
  return texts.join('\n');
};

const keptNames = async (): Promise<readonly string[]> => (await place.store.blobs()).map(({ name }) => name);

/** The place as one tab sees it, with a part of its store changed. */
const withStore = (store: Partial<ClinicStore>): Place => ({ ...place, store: { ...place.store, ...store } });

describe('a file that a clinic names', () => {
  test('stays where the disk fails after the clinic was kept', async () => {
    const full = () => Promise.reject(new StorageError('full', 'no room'));
    await imported(workspaceOn(engine, withStore({ setLastOpen: full })), [FIRST]);
    const [header] = await place.store.list();
    expect(await clientsOf(value(await workspaceOn(engine, place).switchTo(header?.id ?? '')))).toEqual(['a']);
  });

  test('stays where another tab, which brought it first, did not keep its own clinic', async () => {
    const second = workspaceOn(other, place);
    const swap: ClinicStore['swap'] = async () => {
      value(await imported(second, [FIRST]));
      throw new StorageError('full', 'no room');
    };
    expect(codeOf(await imported(workspaceOn(engine, withStore({ swap })), [FIRST]))).toBe('no_room');
    expect(await clientsOf(value(await second.open()))).toEqual(['a']);
  });

  test('stays where another tab names it while a clinic is sealed', async () => {
    const second = workspaceOn(other, place);
    let sealing = false;
    const swap: ClinicStore['swap'] = async (expected, next) => {
      if (sealing) value(await imported(second, [FIRST]));
      return place.store.swap(expected, next);
    };
    const first = workspaceOn(engine, withStore({ swap }));
    value(await imported(first, [FIRST]));
    sealing = true;
    value(await first.setPassphrase('correct horse'));
    expect(await clientsOf(value(await second.open()))).toEqual(['a']);
  });

  test('stays where another tab names it while a clinic is deleted', async () => {
    const second = workspaceOn(other, place);
    const remove: ClinicStore['remove'] = async (id) => {
      value(await imported(second, [FIRST]));
      await place.store.remove(id);
    };
    const first = workspaceOn(engine, withStore({ remove }));
    const { clinic } = value(await imported(first, [FIRST]));
    await first.deleteClinic(clinic.id);
    expect(await clientsOf(value(await second.open()))).toEqual(['a']);
  });
});

describe('a file that holds an erased person', () => {
  test('goes even where it is older than the list of clinics', async () => {
    const begunAt = () => Promise.resolve(Date.UTC(2030, 0, 1));
    const workspace = workspaceOn(engine, withStore({ begunAt }));
    value(await imported(workspace, [ZOE]));
    expect(await keptTexts()).toContain('zoe');
    value(await workspace.erase('zoe'));
    expect(await keptTexts()).not.toContain('zoe');
  });

  test('goes later where another tab was between file and manifest', async () => {
    const { tabs } = place.bus.open();
    let busy = false;
    const workspace = workspaceOn(engine, place, {
      tabs: { ...tabs, ifNobodyKeeps: (task) => (busy ? Promise.resolve(undefined) : tabs.ifNobodyKeeps(task)) },
    });
    value(await imported(workspace, [ZOE]));
    busy = true;
    value(await workspace.erase('zoe'));
    expect(await keptTexts()).toContain('zoe');
    busy = false;
    value(await workspace.open());
    expect(await keptTexts()).not.toContain('zoe');
  });

  test('goes even where another clinic cannot be read, and that clinic keeps what it names', async () => {
    const workspace = workspaceOn(engine, place);
    const named = value(await imported(workspace, [FIRST]));
    const unread = { state: { imports: [{ sha256: named.imports[0]?.files[0]?.sha256 }] } };
    const header = (await place.store.list())[0];
    if (header === undefined) throw new Error('no clinic');
    await place.store.swap(0, { ...header, id: 'unread', version: 2, revision: 1, body: unread });
    value(await imported(workspace, [ZOE], named.clinic.id));
    value(await workspace.erase('zoe'));
    expect(await keptTexts()).not.toContain('zoe');
    value(await workspace.setPassphrase('correct horse'));
    expect((await keptNames()).filter((name) => !name.endsWith('.age'))).toEqual([named.imports[0]?.files[0]?.sha256]);
  });
});
