import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openNodeEngine } from '../../lib/engine/node';
import type { Engine } from '../../lib/engine/types';
import type { ClinicStore } from '../../lib/storage/clinic-store';
import { clinicBodySchema, type ClinicBody } from '../../lib/workspace/clinic-state';
import { keptBlobs } from '../../lib/workspace/kept-blobs';
import type { Workspace } from '../../lib/workspace/workspace';
import { clientsOf, copyOf, FIRST, imported, newPlace, SECOND, value, workspaceOn, type Place } from './workspace-on';

let engine: Engine;
beforeAll(async () => {
  engine = await openNodeEngine();
});
afterAll(() => engine.close());

const WRITES = ['putBlob', 'swap', 'removeBlob'] as const;

/** The page dies before its n-th write: from then on nothing is written any more. */
const dyingStore = (store: ClinicStore, at: number): ClinicStore & { readonly writes: () => number } => {
  let writes = 0;
  const dying = { ...store };
  for (const name of WRITES) {
    const write = store[name].bind(store) as (...values: unknown[]) => Promise<unknown>;
    const wrapped = (...values: unknown[]): Promise<unknown> => {
      writes += 1;
      return writes >= at ? Promise.reject(new Error('the page is gone')) : write(...values);
    };
    Object.assign(dying, { [name]: wrapped });
  }
  return Object.assign(dying, { writes: () => writes });
};

interface Death {
  /** What the manifest holds afterwards. */
  readonly body: ClinicBody;
  /** Kept files that no state needs. */
  readonly orphans: number;
  readonly place: Place;
}

/** Lets a tab die before every one of an act's writes, and after the last; what is kept then, every needed file whole. */
const deathsOf = async (
  from: Place,
  id: string,
  act: (workspace: Workspace) => Promise<unknown>,
): Promise<readonly Death[]> => {
  const deaths: Death[] = [];
  for (let at = 1; ; at += 1) {
    const copy = await copyOf(from);
    const store = dyingStore(copy.store, at);
    await act(workspaceOn(engine, { ...copy, store })).catch(() => undefined);
    const body = clinicBodySchema.parse((await copy.store.read(id))?.body);
    const needed = keptBlobs(body);
    for (const name of needed) expect(await copy.store.getBlob(name)).toBeDefined();
    const orphans = (await copy.store.blobs()).filter(({ name }) => !needed.has(name)).length;
    deaths.push({ body, orphans, place: { ...copy, bus: newPlace().bus } });
    if (store.writes() < at) return deaths;
  }
};

describe('killed at any write', () => {
  let from: Place;
  let id: string;
  beforeAll(async () => {
    from = newPlace();
    id = value(await imported(workspaceOn(engine, from), [FIRST])).clinic.id;
  });

  test('of a commit, the clinic is as it was or as it would be, and the next start removes what is left over', async () => {
    const deaths = await deathsOf(from, id, (workspace) => imported(workspace, [SECOND], id));
    const imports = deaths.map(({ body }) => body.state.imports.length);
    expect(imports).toEqual([...imports].sort());
    expect(new Set(imports)).toEqual(new Set([1, 2]));
    const cut = deaths.find(({ orphans }) => orphans > 0);
    if (cut === undefined) throw new Error('no death between file and manifest');
    const next = workspaceOn(engine, cut.place);
    expect(await clientsOf(value(await next.open()))).toEqual(['a']);
    expect((await cut.place.store.blobs()).length).toBe(1);
    const done = deaths.at(-1);
    if (done === undefined) throw new Error('no death');
    expect(await clientsOf(value(await workspaceOn(engine, done.place).open()))).toEqual(['a', 'b']);
  });

  test('of an erasure, the person is there whole or gone, and the next start removes the old file', async () => {
    const grown = newPlace();
    const two = value(await imported(workspaceOn(engine, grown), [SECOND])).clinic.id;
    const deaths = await deathsOf(grown, two, async (workspace) => {
      await workspace.open();
      return workspace.erase('b');
    });
    const stones = deaths.map(({ body }) => body.tombstones.length);
    expect(stones).toEqual([...stones].sort());
    expect(new Set(stones)).toEqual(new Set([0, 1]));
    const cut = deaths.find(({ body, orphans }) => body.tombstones.length === 1 && orphans > 0);
    if (cut === undefined) throw new Error('no death between manifest and the old file');
    expect(await clientsOf(value(await workspaceOn(engine, cut.place).open()))).toEqual(['a']);
    const texts: string[] = [];
    for (const { name } of await cut.place.store.blobs())
      texts.push((await (await cut.place.store.getBlob(name))?.text()) ?? '');
    expect(texts.length).toBe(1);
    expect(texts.join('\n')).not.toMatch(/^b,|,b,/m);
  });
});
