import { blobPieces } from './blob-pieces';
import { sha256 as incremental } from '@noble/hashes/sha2.js';
import { sha256 } from '../core/sha256';
import { eachChunk } from './each-chunk';

/** Up to this size the browser's own digest is used: it is ten times as fast, but takes all bytes at once. */
const AT_ONCE_BYTES = 4 * 1024 * 1024;

export const hexadecimal = (bytes: Uint8Array): string =>
  [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');

/** An SHA-256 that takes its bytes piece by piece. */
export const sha256InPieces = (): { update(chunk: Uint8Array): void; digest(): string } => {
  const hash = incremental.create();
  return {
    update: (chunk) => {
      hash.update(chunk);
    },
    digest: () => hexadecimal(hash.digest()),
  };
};

/**
 * SHA-256 of a file as lower-case hexadecimal text, read as a stream: a large file is never in memory.
 *
 * @param onBytes told the bytes read so far
 * @throws the signal's reason once it is aborted; a DOMException where the file cannot be read
 */
export const sha256OfBlob = async (
  blob: Blob,
  signal?: AbortSignal,
  onBytes?: (bytes: number) => void,
): Promise<string> => {
  signal?.throwIfAborted();
  if (blob.size <= AT_ONCE_BYTES) {
    const name = await sha256(new Uint8Array(await blob.arrayBuffer()));
    onBytes?.(blob.size);
    return name;
  }
  const hash = sha256InPieces();
  let bytes = 0;
  await eachChunk(
    blobPieces(blob),
    (chunk) => {
      hash.update(chunk);
      bytes += chunk.length;
      onBytes?.(bytes);
    },
    signal,
  );
  return hash.digest();
};
