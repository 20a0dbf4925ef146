import { blobPieces } from '../blob-pieces';
import { StorageError, type BlobStore, type KeptBlob } from '../clinic-store';
import { eachChunk } from '../each-chunk';
import { sameBytes } from '../same-bytes';
import { isPlainName } from '../sealed-name';
import { sha256OfBlob } from '../sha256-of-blob';
import { storageErrorFrom } from '../storage-error-from';

const isNotFound = (error: unknown): boolean => error instanceof DOMException && error.name === 'NotFoundError';

const openFolder = async (): Promise<FileSystemDirectoryHandle> => {
  if (typeof navigator.storage?.getDirectory !== 'function')
    throw new StorageError('denied', 'this browser keeps no files for pages');
  try {
    const root = await navigator.storage.getDirectory();
    return await root.getDirectoryHandle('blobs', { create: true });
  } catch (error) {
    throw storageErrorFrom(error, 'denied');
  }
};

const findFile = async (folder: FileSystemDirectoryHandle, name: string): Promise<File | undefined> => {
  try {
    return await (await folder.getFileHandle(name)).getFile();
  } catch (error) {
    if (isNotFound(error)) return undefined;
    throw storageErrorFrom(error);
  }
};

// A file that was damaged on the disk may fail to be read at all.
const hashOfKept = async (file: Blob, signal?: AbortSignal): Promise<string | undefined> => {
  try {
    return await sha256OfBlob(file, signal);
  } catch (error) {
    signal?.throwIfAborted();
    if (error instanceof DOMException) return undefined;
    throw error;
  }
};

/** Hashes what is to be kept; a file on a person's disk may have changed or gone since it was read. */
const hashOfGiven = async (blob: Blob, signal?: AbortSignal): Promise<string> => {
  try {
    return await sha256OfBlob(blob, signal);
  } catch (error) {
    signal?.throwIfAborted();
    throw new StorageError('changed', error instanceof Error ? error.message : 'the file cannot be read any more');
  }
};

const write = async (folder: FileSystemDirectoryHandle, name: string, blob: Blob, signal?: AbortSignal) => {
  const handle = await folder.getFileHandle(name, { create: true });
  if (typeof handle.createWritable !== 'function')
    throw new StorageError('denied', 'this browser cannot write files for pages');
  const writable = await handle.createWritable();
  let writing = false;
  try {
    await eachChunk(
      blobPieces(blob),
      async (chunk) => {
        writing = true;
        await writable.write(chunk);
        writing = false;
      },
      signal,
    );
    writing = true;
    await writable.close();
  } catch (error) {
    await writable.abort().catch(() => undefined);
    signal?.throwIfAborted();
    if (writing) throw storageErrorFrom(error);
    throw new StorageError('changed', error instanceof Error ? error.message : 'the file cannot be read any more');
  }
};

// A sealed file's name does not tell its bytes: they are compared with those that were given.
const isWhole = async (kept: File, name: string, given: Blob, signal?: AbortSignal): Promise<boolean> =>
  isPlainName(name) ? (await hashOfKept(kept, signal)) === name : sameBytes(kept, given, signal);

const remove = async (folder: FileSystemDirectoryHandle, name: string): Promise<void> => {
  try {
    await folder.removeEntry(name);
  } catch (error) {
    if (!isNotFound(error)) throw storageErrorFrom(error);
  }
};

/** Removes what a write that broke off left: an empty file, or one that is not what its name says. */
const removeUnfinished = async (folder: FileSystemDirectoryHandle, name: string): Promise<void> => {
  const left = await findFile(folder, name);
  if (left === undefined) return;
  const isWhole = left.size > 0 && (!isPlainName(name) || (await hashOfKept(left)) === name);
  if (!isWhole) await remove(folder, name);
};

/**
 * Files in the private file system of the page's origin, in the folder `blobs`. A file gets its name when it is whole:
 * the writer swaps it in at its close (W3C File System, `createWritable`).
 */
export const opfsBlobs = (): BlobStore => ({
  putBlob: async (name, blob, signal) => {
    signal?.throwIfAborted();
    const folder = await openFolder();
    const before = await findFile(folder, name);
    if (before?.size === blob.size && isPlainName(name) && (await hashOfKept(before, signal)) === name) return;
    try {
      await write(folder, name, blob, signal);
      const kept = await findFile(folder, name);
      if (kept !== undefined && (await isWhole(kept, name, blob, signal))) return;
      throw !isPlainName(name) || (await hashOfGiven(blob, signal)) === name
        ? new StorageError('damaged', 'the file was not kept whole')
        : new StorageError('changed', 'the file is not the one that was read');
    } catch (error) {
      // What stands there whole stays: it stood there before, or another tab kept the same file meanwhile.
      if (before === undefined) await removeUnfinished(folder, name).catch(() => undefined);
      signal?.throwIfAborted();
      throw storageErrorFrom(error, isNotFound(error) ? 'cleared' : 'failed');
    }
  },
  getBlob: async (name) => {
    const file = await findFile(await openFolder(), name);
    if (file === undefined || !isPlainName(name)) return file;
    return (await hashOfKept(file)) === name ? file : undefined;
  },
  removeBlob: async (name) => {
    await remove(await openFolder(), name);
  },
  blobs: async () => {
    const folder = await openFolder();
    const kept: KeptBlob[] = [];
    try {
      for await (const [name, handle] of folder.entries()) {
        if (handle.kind !== 'file') continue;
        const file = await findFile(folder, name);
        if (file !== undefined) kept.push({ name, bytes: file.size, keptAt: file.lastModified });
      }
    } catch (error) {
      throw storageErrorFrom(error, isNotFound(error) ? 'cleared' : 'failed');
    }
    return kept;
  },
});
