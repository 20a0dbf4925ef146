import { describe, expect, test } from 'vitest';
import { StorageError } from '../../lib/storage/clinic-store';
import { memoryStore } from '../../lib/storage/memory/memory-store';
import { errorOf, sampleClinic, textFile } from './support/sample-clinic';

describe('a store of clinics', () => {
  test('swaps a manifest only over the revision that the writer saw', async () => {
    const store = memoryStore();
    expect(await store.swap(0, sampleClinic())).toBe('swapped');
    expect(await store.swap(0, sampleClinic())).toBe('changed-meanwhile');
    expect(await store.swap(1, sampleClinic({ revision: 2, name: 'Hill' }))).toBe('swapped');
    expect(await store.swap(1, sampleClinic({ revision: 2, name: 'Lake' }))).toBe('changed-meanwhile');
    expect((await store.read('clinic-a'))?.name).toBe('Hill');
  });

  test('refuses to put an older layout over a newer one, and a change over a clinic that is gone', async () => {
    const store = memoryStore();
    await store.swap(0, sampleClinic({ version: 3 }));
    expect(await store.swap(1, sampleClinic({ version: 2, revision: 2 }))).toBe('newer');
    await store.remove('clinic-a');
    expect(await store.swap(1, sampleClinic({ revision: 2 }))).toBe('gone');
  });

  test('lists clinics without their bodies and hands out copies', async () => {
    const store = memoryStore();
    await store.swap(0, sampleClinic());
    expect(await store.list()).toEqual([
      {
        id: 'clinic-a',
        name: 'Riverside',
        version: 2,
        revision: 1,
        sealed: false,
        changedAt: '2026-01-05T10:00:00.000Z',
      },
    ]);
    const read = (await store.read('clinic-a'))?.body as { notes: string[] };
    read.notes.push('changed by the reader');
    expect((await store.read('clinic-a'))?.body).toEqual(sampleClinic().body);
  });

  test('keeps a file under its hash, and refuses another under that name', async () => {
    const store = memoryStore(() => 5);
    const { sha256, blob } = await textFile('client_id,weight_kg\nA,70\n');
    await store.putBlob(sha256, blob);
    expect(await (await store.getBlob(sha256))?.text()).toBe('client_id,weight_kg\nA,70\n');
    expect(await store.blobs()).toEqual([{ name: sha256, bytes: 25, keptAt: 5 }]);
    const error = await errorOf(store.putBlob(sha256, new Blob(['other'])));
    expect(error).toBeInstanceOf(StorageError);
    expect((error as StorageError).fault).toBe('changed');
    await store.removeBlob(sha256);
    expect(await store.getBlob(sha256)).toBeUndefined();
  });

  test('stops with the reason of the signal', async () => {
    const { sha256, blob } = await textFile('x');
    const reason = new Error('stopped by the person');
    expect(await errorOf(memoryStore().putBlob(sha256, blob, AbortSignal.abort(reason)))).toBe(reason);
  });
});
