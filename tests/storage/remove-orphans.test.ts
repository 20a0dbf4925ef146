import { describe, expect, test } from 'vitest';
import { memoryStore } from '../../lib/storage/memory/memory-store';
import { createTabBus } from '../../lib/storage/memory/memory-tabs';
import { orphans, removeOrphans } from '../../lib/storage/remove-orphans';
import { sealedName } from '../../lib/storage/sealed-name';
import { sampleClinic, textFile } from './support/sample-clinic';

const hash = (digit: string) => digit.repeat(64);
const kept = (name: string, keptAt = 10) => ({ name, bytes: 1, keptAt });
const { body: _, ...open } = sampleClinic();
const locked = { ...open, id: 'locked', sealed: true };

describe('files that no clinic names', () => {
  test('are found, in the open and sealed', () => {
    const blobs = [kept(hash('a')), kept(hash('b')), kept(sealedName(hash('a'), 'gone'))];
    expect(orphans(blobs, [{ header: open, names: [hash('a')] }], 0).map(({ name }) => name)).toEqual([
      hash('b'),
      sealedName(hash('a'), 'gone'),
    ]);
  });

  test('stay where they may belong to a locked clinic, but nothing in the open belongs to one', () => {
    const blobs = [kept(hash('a')), kept(sealedName(hash('b'), 'locked'))];
    const found = orphans(
      blobs,
      [
        { header: open, names: [] },
        { header: locked, names: null },
      ],
      0,
    );
    expect(found.map(({ name }) => name)).toEqual([hash('a')]);
  });

  test('stay while a clinic cannot be read, while there is no clinic, and where they outlived a lost list', () => {
    expect(orphans([kept(hash('a'))], [{ header: open, names: null }], 0)).toEqual([]);
    expect(orphans([kept(hash('a'))], [], 0)).toEqual([]);
    expect(orphans([kept(hash('a'), 10)], [{ header: open, names: [] }], 11)).toEqual([]);
  });

  test('are removed, except while another tab is between file and manifest', async () => {
    const store = memoryStore();
    const bus = createTabBus();
    await store.swap(0, sampleClinic());
    const { sha256, blob } = await textFile('left by a crash');
    const namesOf = () => Promise.resolve([]);
    const [writer, cleaner] = [bus.open().tabs, bus.open().tabs];
    await writer.whileKeeping(async () => {
      await store.putBlob(sha256, blob);
      expect(await removeOrphans(store, cleaner, namesOf)).toBeUndefined();
      expect(await store.getBlob(sha256)).toBeDefined();
    });
    expect(await removeOrphans(store, cleaner, namesOf)).toBe(1);
    expect(await store.blobs()).toEqual([]);
  });
});
