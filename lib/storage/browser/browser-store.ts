import { StorageError, type ClinicStore, type StoredClinic } from '../clinic-store';
import { swapVerdict } from '../swap-verdict';
import type { Database } from './database';
import { opfsBlobs } from './opfs-blobs';

const isNewer = (error: unknown): boolean => error instanceof StorageError && error.fault === 'newer';

const headerOf = ({ body: _, ...header }: StoredClinic) => header;

/** Whether the browser's promise to keep the storage can be asked for; it cannot on some pages of some browsers. */
const storageManager = (): StorageManager | undefined =>
  typeof navigator === 'undefined' ? undefined : navigator.storage;

/**
 * Clinics in the storage of this browser profile: files in the private file system of the page's origin, manifests in
 * IndexedDB. A transaction is `strict`: it ends when the disk has it.
 */
export const browserStore = (database: Database): ClinicStore => ({
  ...opfsBlobs(),

  list: () =>
    database.use(async (kept) => {
      const clinics = await kept.getAll('clinics');
      return clinics.map(headerOf);
    }),
  read: (id) => database.use((kept) => kept.get('clinics', id)),
  swap: (expectedRevision, next) =>
    database
      .use(async (kept) => {
        const transaction = kept.transaction('clinics', 'readwrite', { durability: 'strict' });
        const before = await transaction.store.get(next.id);
        const verdict = swapVerdict(before, expectedRevision, next);
        const put = verdict === 'swapped' ? transaction.store.put(next, next.id) : undefined;
        await Promise.all([put, transaction.done]);
        return verdict;
      })
      .catch((error: unknown) => {
        if (isNewer(error)) return 'newer' as const;
        throw error;
      }),
  remove: (id) =>
    database.use(async (kept) => {
      const transaction = kept.transaction('clinics', 'readwrite', { durability: 'strict' });
      await Promise.all([transaction.store.delete(id), transaction.done]);
    }),
  lastOpen: () =>
    database.use(async (kept) => {
      const id = await kept.get('places', 'last-open');
      return typeof id === 'string' ? id : undefined;
    }),
  setLastOpen: (id) =>
    database.use(async (kept) => {
      await kept.put('places', id, 'last-open');
    }),
  begunAt: () =>
    database.use(async (kept) => {
      const at = await kept.get('places', 'begun-at');
      return typeof at === 'number' ? at : 0;
    }),

  room: async () => {
    const manager = storageManager();
    const estimate = await manager?.estimate?.().catch(() => undefined);
    return {
      usedBytes: estimate?.usage ?? null,
      quotaBytes: estimate?.quota ?? null,
      persisted: (await manager?.persisted?.().catch(() => false)) ?? false,
    };
  },
  persist: async () =>
    (await storageManager()
      ?.persist?.()
      .catch(() => false)) ?? false,
});
