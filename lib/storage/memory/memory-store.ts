import { StorageError, type ClinicStore, type KeptBlob, type StoredClinic } from '../clinic-store';
import { isPlainName } from '../sealed-name';
import { sha256OfBlob } from '../sha256-of-blob';
import { swapVerdict } from '../swap-verdict';

/** Clinics that last as long as the process: for Node and for tests of the use cases. */
export const memoryStore = (now: () => number = Date.now): ClinicStore => {
  const clinics = new Map<string, StoredClinic>();
  const files = new Map<string, { readonly blob: Blob; readonly kept: KeptBlob }>();
  const begunAt = now();
  let last: string | undefined;

  return {
    list: () => Promise.resolve([...clinics.values()].map(({ body: _, ...header }) => header)),
    read: (id) => Promise.resolve(structuredClone(clinics.get(id))),
    swap: (expectedRevision, next) => {
      const verdict = swapVerdict(clinics.get(next.id), expectedRevision, next);
      if (verdict === 'swapped') clinics.set(next.id, structuredClone(next));
      return Promise.resolve(verdict);
    },
    remove: (id) => {
      clinics.delete(id);
      return Promise.resolve();
    },
    lastOpen: () => Promise.resolve(last),
    setLastOpen: (id) => {
      last = id;
      return Promise.resolve();
    },
    begunAt: () => Promise.resolve(begunAt),

    putBlob: async (name, blob, signal) => {
      const sha256 = await sha256OfBlob(blob, signal);
      if (isPlainName(name) && sha256 !== name)
        throw new StorageError('changed', 'the file is not the one that was read');
      files.set(name, { blob, kept: { name, bytes: blob.size, keptAt: now() } });
    },
    getBlob: (name) => Promise.resolve(files.get(name)?.blob),
    removeBlob: (name) => {
      files.delete(name);
      return Promise.resolve();
    },
    blobs: () => Promise.resolve([...files.values()].map(({ kept }) => kept)),

    room: () => Promise.resolve({ usedBytes: null, quotaBytes: null, persisted: false }),
    persist: () => Promise.resolve(false),
  };
};
