import { DamagedFile, type ReadOptions } from './raw-table';

const CHUNK = 4 * 1024 * 1024;

/**
 * Bytes of a part of a Blob; the end may lie behind its own. Rejects with a `DamagedFile` where the part does not exist,
 * or the file behind the Blob is gone or changed.
 */
export const blobBytes = async (blob: Blob, from = 0, to = blob.size): Promise<Uint8Array<ArrayBuffer>> => {
  const end = Math.min(to, blob.size);
  // Node ends the whole process over a place that is no whole number.
  if (!Number.isInteger(from) || !Number.isInteger(end) || from < 0 || from > end)
    throw new DamagedFile('The file has no such part.');
  try {
    return new Uint8Array(await blob.slice(from, end).arrayBuffer());
  } catch (cause) {
    throw new DamagedFile('The file cannot be read any more.', { cause });
  }
};

/** A Blob in pieces of a few megabytes. Rejects with an AbortError when the signal fires. */
export async function* blobChunks(
  blob: Blob,
  { signal, onBytes }: ReadOptions = {},
  size = CHUNK,
): AsyncGenerator<Uint8Array<ArrayBuffer>> {
  for (let offset = 0; offset < blob.size; offset += size) {
    signal?.throwIfAborted();
    const chunk = await blobBytes(blob, offset, Math.min(offset + size, blob.size));
    signal?.throwIfAborted();
    onBytes?.(Math.min(offset + size, blob.size));
    yield chunk;
  }
}
