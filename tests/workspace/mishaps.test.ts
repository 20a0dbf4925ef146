import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { openNodeEngine } from '../../lib/engine/node';
import type { Engine } from '../../lib/engine/types';
import { StorageError } from '../../lib/storage/clinic-store';
import type { Session, Workspace } from '../../lib/workspace/workspace';
import { latestOf } from '../cohort/small-clinic';
import {
  clientsOf,
  codeOf,
  copyOf,
  draftOf,
  FIRST,
  imported,
  newPlace,
  planOf,
  SECOND,
  value,
  workspaceOn,
  type Place,
} from './workspace-on';

let engine: Engine;
let base: Place;
let id: string;
beforeAll(async () => {
  engine = await openNodeEngine();
  base = newPlace();
  id = value(await imported(workspaceOn(engine, base), [FIRST])).clinic.id;
});
afterAll(() => engine.close());

let place: Place;
beforeEach(async () => {
  place = await copyOf(base);
});

/** All that is kept, to be compared. */
const kept = async (): Promise<unknown> => [
  await Promise.all((await place.store.list()).map((header) => place.store.read(header.id))),
  (await place.store.blobs()).map(({ name }) => name).sort(),
];

describe('an import', () => {
  let workspace: Workspace;
  let session: Session;
  let before: unknown;
  beforeEach(async () => {
    workspace = workspaceOn(engine, place);
    session = value(await workspace.open());
    before = await kept();
  });

  const unchanged = async (): Promise<void> => {
    expect(await kept()).toEqual(before);
    expect((await latestOf(session.cohort, 'a', 'weight')).to).toBe('2025-06-06');
  };

  test('of a file that changed between preview and commit is refused', async () => {
    const draft = await draftOf(workspace, [SECOND], id);
    const plan = value(await workspace.plan(draft));
    const given = [{ name: 'second.csv', blob: new Blob([SECOND.blob, 'x']) }];
    expect(codeOf(await workspace.commit(plan, { ...draft, given }))).toBe('file_changed');
    await unchanged();
  });

  test('can be stopped while it is read, judged, kept and built', async () => {
    const stopping = (at: string) => {
      const controller = new AbortController();
      return {
        signal: controller.signal,
        onProgress: ({ step }: { readonly step: string }) => {
          if (step === at) controller.abort();
        },
      };
    };
    for (const at of ['hashing', 'reading']) {
      expect([at, codeOf(await workspace.read([SECOND], id, stopping(at)))]).toEqual([at, 'cancelled']);
    }
    const draft = await draftOf(workspace, [SECOND], id);
    for (const at of ['reading', 'judging']) {
      expect([at, codeOf(await workspace.plan(draft, stopping(at)))]).toEqual([at, 'cancelled']);
    }
    const plan = value(await workspace.plan(draft));
    for (const at of ['keeping', 'judging', 'building']) {
      expect([at, codeOf(await workspace.commit(plan, draft, stopping(at)))]).toEqual([at, 'cancelled']);
      await unchanged();
    }
    expect(await clientsOf(value(await workspace.commit(plan, draft)))).toEqual(['a', 'b']);
  });

  test('is refused where the browser has no room, with the sizes: before it is read, and before anything is kept', async () => {
    const room = { usedBytes: 900, quotaBytes: 1000, persisted: false };
    const full = workspaceOn(engine, {
      ...place,
      store: { ...place.store, room: () => Promise.resolve({ ...room }) },
      bus: newPlace().bus,
    });
    class UnreadBlob extends Blob {
      override slice(): Blob {
        throw new Error('it is read');
      }
      override stream(): never {
        throw new Error('it is read');
      }
    }
    const refused = {
      ok: false,
      error: { code: 'no_room', message: expect.stringMatching(/1 MB.*1 MB/) as string },
    };
    const unread = new UnreadBlob([SECOND.blob]);
    expect(await full.read([{ name: 'second.csv', blob: unread }], id)).toMatchObject(refused);
    Object.assign(room, { quotaBytes: 1e9 });
    const { commit } = await planOf(full, [SECOND], id);
    Object.assign(room, { quotaBytes: 1000 });
    expect(await commit()).toMatchObject(refused);
    await unchanged();
  });

  test('that the disk or the browser refuses leaves everything as it was', async () => {
    const refusals = [
      ['putBlob', 'full', 'no_room'],
      ['putBlob', 'failed', 'not_kept'],
      ['swap', 'denied', 'denied'],
    ] as const;
    for (const [write, fault, code] of refusals) {
      const store = { ...place.store, [write]: () => Promise.reject(new StorageError(fault, 'refused')) };
      const refused = workspaceOn(engine, { ...place, store, bus: newPlace().bus });
      expect([write, codeOf(await imported(refused, [SECOND], id))]).toEqual([write, code]);
      await unchanged();
    }
  });
});

test('a plan that a commit does not repeat is refused as an error of the program', async () => {
  const workspace = workspaceOn(engine, place);
  const draft = await draftOf(workspace, [SECOND], id);
  const plan = value(await workspace.plan(draft));
  const settings = { ...draft.settings, answers: [{ kind: 'same-client' as const, ids: ['b'], client: 'a' }] };
  const before = await kept();
  expect(codeOf(await workspace.commit(plan, { ...draft, settings }))).toBe('plan_differs');
  expect(await kept()).toEqual(before);
});
