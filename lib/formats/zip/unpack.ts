import { Inflate } from 'fflate';
import { blobBytes, blobChunks } from '../blob-chunks';
import { DamagedFile, type ReadOptions } from '../raw-table';
import { crc32 } from './crc-32';
import type { ZipEntry } from './zip-entry';

const LOCAL_HEADER = 0x04034b50;
/** Deflate grows a piece at most 1032-fold: 32 KiB stay below 34 MiB. */
const PIECE = 32 * 1024;

const packedPart = async (blob: Blob, entry: ZipEntry): Promise<Blob> => {
  const header = await blobBytes(blob, entry.offset, entry.offset + 30);
  const view = new DataView(header.buffer);
  if (header.length < 30 || view.getUint32(0, true) !== LOCAL_HEADER)
    throw new DamagedFile('A member of the archive is not where the directory says.');
  const start = entry.offset + 30 + view.getUint16(26, true) + view.getUint16(28, true);
  if (start + entry.packedBytes > blob.size) throw new DamagedFile('A member of the archive is cut off.');
  return blob.slice(start, start + entry.packedBytes);
};

async function* inflated(packed: Blob, options: ReadOptions): AsyncGenerator<Uint8Array> {
  let pieces: Uint8Array[] = [];
  const inflate = new Inflate((piece) => pieces.push(piece));
  for await (const chunk of blobChunks(packed, options))
    for (let at = 0; at < chunk.length; at += PIECE) {
      try {
        inflate.push(chunk.subarray(at, at + PIECE), false);
      } catch (cause) {
        throw new DamagedFile('A member of the archive cannot be unpacked.', { cause });
      }
      yield* pieces;
      pieces = [];
    }
}

/**
 * The content of a stored or deflated member, in pieces; no more than one is held. Rejects with a `DamagedFile` where
 * size or check sum is not what the directory says (the check sum is known after the last piece), with an AbortError
 * when the signal fires. `onBytes` counts packed bytes.
 */
export async function* unpack(blob: Blob, entry: ZipEntry, options: ReadOptions = {}): AsyncGenerator<Uint8Array> {
  if (entry.isEncrypted || (entry.method !== 0 && entry.method !== 8))
    throw new DamagedFile('A member of the archive is packed in a way that is not read.');
  const packed = await packedPart(blob, entry);
  let [size, check] = [0, 0];
  for await (const piece of entry.method === 0 ? blobChunks(packed, options) : inflated(packed, options)) {
    size += piece.length;
    if (size > entry.bytes) throw new DamagedFile('A member of the archive is larger than the directory says.');
    check = crc32(piece, check);
    yield piece;
  }
  if (size !== entry.bytes || check !== entry.crc32)
    throw new DamagedFile('A member of the archive is not what the directory says.');
}

/** A member as a Blob. */
export const unpackToBlob = async (blob: Blob, entry: ZipEntry, options: ReadOptions = {}): Promise<Blob> => {
  const pieces: Uint8Array<ArrayBuffer>[] = [];
  for await (const piece of unpack(blob, entry, options)) pieces.push(piece.slice());
  return new Blob(pieces);
};
