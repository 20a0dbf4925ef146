import { afterEach, expect, test, vi } from 'vitest';
import { opfsBlobs } from '../../lib/storage/browser/opfs-blobs';
import { sha256OfBlob } from '../../lib/storage/sha256-of-blob';

/**
 * A folder with the promises of the W3C File System draft that matter here: a file exists empty from its handle on, and
 * what is written is swapped in when its writer closes.
 */
const folderOf = (files: Map<string, Blob>) => {
  const folder = {
    getDirectoryHandle: () => Promise.resolve(folder),
    getFileHandle: (name: string, options?: { readonly create?: boolean }) => {
      if (!files.has(name)) {
        if (options?.create !== true) return Promise.reject(new DOMException('none', 'NotFoundError'));
        files.set(name, new Blob());
      }
      return Promise.resolve({
        getFile: () => Promise.resolve(files.get(name)),
        createWritable: () => {
          const pieces: Uint8Array<ArrayBuffer>[] = [];
          return Promise.resolve({
            write: (piece: Uint8Array<ArrayBuffer>) => {
              pieces.push(piece);
              return Promise.resolve();
            },
            close: () => {
              files.set(name, new Blob(pieces));
              return Promise.resolve();
            },
            abort: () => Promise.resolve(),
          });
        },
      });
    },
    removeEntry: (name: string) => {
      files.delete(name);
      return Promise.resolve();
    },
  };
  return folder;
};

afterEach(() => {
  vi.unstubAllGlobals();
});

test('a write that is stopped removes its empty file, and not the one that another tab finished meanwhile', async () => {
  const files = new Map<string, Blob>();
  vi.stubGlobal('navigator', { storage: { getDirectory: () => Promise.resolve(folderOf(files)) } });
  const blob = new Blob(['a,b\n1,2\n']);
  const name = await sha256OfBlob(blob);
  const blobs = opfsBlobs();
  const stopAfter = (before: () => Promise<void>) => {
    const stop = new AbortController();
    const slice = async (): Promise<ArrayBuffer> => {
      await before();
      stop.abort();
      return blob.arrayBuffer();
    };
    const slow = { size: blob.size, slice: () => ({ arrayBuffer: slice }) } as unknown as Blob;
    return blobs.putBlob(name, slow, stop.signal);
  };
  await expect(stopAfter(() => Promise.resolve())).rejects.toThrow();
  expect([...files.keys()]).toEqual([]);
  await expect(stopAfter(() => blobs.putBlob(name, blob))).rejects.toThrow();
  expect(await (await blobs.getBlob(name))?.text()).toBe('a,b\n1,2\n');
});
