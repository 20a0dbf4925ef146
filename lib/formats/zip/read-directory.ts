import { blobBytes } from '../blob-chunks';
import { utf8OrNull, windows1252 } from '../csv/text-encoding';
import { DamagedFile } from '../raw-table';
import type { ZipEntry } from './zip-entry';

const END = 0x06054b50;
const END_64_LOCATOR = 0x07064b50;
const END_64 = 0x06064b50;
const HEADER = 0x02014b50;
const END_LENGTH = 22;
const LONGEST_COMMENT = 65_535;
const LARGEST_DIRECTORY = 64 * 1024 * 1024;
const ALL_ONES = 0xffffffff;

const viewOf = (bytes: Uint8Array): DataView => new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);

const longAt = (view: DataView, offset: number): number => Number(view.getBigUint64(offset, true));

const findEnd = (tail: DataView): number => {
  for (let at = tail.byteLength - END_LENGTH; at >= 0; at -= 1)
    if (tail.getUint32(at, true) === END && at + END_LENGTH + tail.getUint16(at + 20, true) <= tail.byteLength)
      return at;
  throw new DamagedFile('The archive has no directory.');
};

const directoryPlace = async (blob: Blob): Promise<{ offset: number; bytes: number }> => {
  const from = Math.max(0, blob.size - END_LENGTH - LONGEST_COMMENT);
  const tail = viewOf(await blobBytes(blob, from));
  const end = findEnd(tail);
  const short = { bytes: tail.getUint32(end + 12, true), offset: tail.getUint32(end + 16, true) };
  const locator = end - 20;
  if (locator < 0 || tail.getUint32(locator, true) !== END_64_LOCATOR) return short;
  const at = longAt(tail, locator + 8);
  const record = viewOf(await blobBytes(blob, at, at + 56));
  if (record.byteLength < 56 || record.getUint32(0, true) !== END_64)
    throw new DamagedFile('The archive has no directory.');
  return { bytes: longAt(record, 40), offset: longAt(record, 48) };
};

/** The sizes and the place of a large member stand in an extra field, in this order, each only where it did not fit. */
const largeNumbers = (extra: DataView): number[] => {
  for (let at = 0; at + 4 <= extra.byteLength;) {
    const length = extra.getUint16(at + 2, true);
    const end = Math.min(at + 4 + length, extra.byteLength);
    if (extra.getUint16(at, true) === 1) {
      const numbers: number[] = [];
      for (let place = at + 4; place + 8 <= end; place += 8) numbers.push(longAt(extra, place));
      return numbers;
    }
    at = at + 4 + length;
  }
  return [];
};

/**
 * The members of a zip archive from its central directory, large archives (ZIP64) included. Rejects with a `DamagedFile`.
 *
 * Source: the public .ZIP application note, sections 4.3.12 to 4.3.16 and 4.5.3.
 */
export const readDirectory = async (blob: Blob): Promise<readonly ZipEntry[]> => {
  const { offset, bytes } = await directoryPlace(blob);
  if (bytes > LARGEST_DIRECTORY || offset + bytes > blob.size) throw new DamagedFile('The archive has no directory.');
  const directory = await blobBytes(blob, offset, offset + bytes);
  const view = viewOf(directory);
  const entries: ZipEntry[] = [];
  for (let at = 0; at + 46 <= directory.length && view.getUint32(at, true) === HEADER;) {
    const flags = view.getUint16(at + 8, true);
    const [nameLength, extraLength, commentLength] = [28, 30, 32].map((place) => view.getUint16(at + place, true)) as [
      number,
      number,
      number,
    ];
    const name = directory.subarray(at + 46, at + 46 + nameLength);
    const extra = directory.subarray(at + 46 + nameLength, at + 46 + nameLength + extraLength);
    const large = largeNumbers(viewOf(extra));
    const numberAt = (place: number): number => {
      const short = view.getUint32(at + place, true);
      return short === ALL_ONES ? (large.shift() ?? short) : short;
    };
    const size = numberAt(24);
    const packedBytes = numberAt(20);
    entries.push({
      path: (utf8OrNull(name) ?? windows1252(name)).replaceAll('\\', '/'),
      isEncrypted: (flags & 1) === 1,
      method: view.getUint16(at + 10, true),
      crc32: view.getUint32(at + 16, true),
      packedBytes,
      bytes: size,
      offset: numberAt(42),
    });
    at += 46 + nameLength + extraLength + commentLength;
  }
  return entries;
};
