import { openDB, type DBSchema, type IDBPDatabase } from 'idb';
import { sha256 } from '../core/sha256';
import type { ClinicStorage } from './clinic-storage';

interface Kept extends DBSchema {
  manifest: { key: 'current'; value: { readonly revision: number } };
}

const openManifests = (): Promise<IDBPDatabase<Kept>> =>
  openDB<Kept>('driftline', 1, {
    upgrade: (database) => {
      database.createObjectStore('manifest');
    },
  });

const blobFolder = async (): Promise<FileSystemDirectoryHandle> => {
  const root = await navigator.storage.getDirectory();
  return root.getDirectoryHandle('blobs', { create: true });
};

const readBlob = async (folder: FileSystemDirectoryHandle, name: string): Promise<Uint8Array | undefined> => {
  try {
    const handle = await folder.getFileHandle(name);
    return new Uint8Array(await (await handle.getFile()).arrayBuffer());
  } catch (error) {
    if (error instanceof DOMException && error.name === 'NotFoundError') return undefined;
    throw error;
  }
};

/** A clinic in the storage of this browser profile: files in its private file system, the manifest in IndexedDB. */
export const browserStorage = (): ClinicStorage => ({
  readManifest: async () => {
    const database = await openManifests();
    try {
      return await database.get('manifest', 'current');
    } finally {
      database.close();
    }
  },
  swapManifest: async (expectedRevision, manifest) => {
    const database = await openManifests();
    try {
      const transaction = database.transaction('manifest', 'readwrite', { durability: 'strict' });
      const kept = await transaction.store.get('current');
      if ((kept?.revision ?? 0) !== expectedRevision) {
        await transaction.done;
        return false;
      }
      await transaction.store.put(manifest, 'current');
      await transaction.done;
      return true;
    } finally {
      database.close();
    }
  },
  putBlob: async (name, bytes) => {
    const folder = await blobFolder();
    const handle = await folder.getFileHandle(name, { create: true });
    const stream = await handle.createWritable();
    await stream.write(bytes as Uint8Array<ArrayBuffer>);
    await stream.close();
    const kept = await readBlob(folder, name);
    if (kept === undefined || (await sha256(kept)) !== name) throw new Error('the file was not kept whole');
  },
  getBlob: async (name) => {
    const bytes = await readBlob(await blobFolder(), name);
    return bytes !== undefined && (await sha256(bytes)) === name ? bytes : undefined;
  },
});
