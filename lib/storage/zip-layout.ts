/** One entry of a zip as its central directory tells it. */
export interface ZipEntry {
  readonly name: string;
  readonly crc32: number;
  readonly packedBytes: number;
  readonly bytes: number;
  /** Where its local header starts. */
  readonly offset: number;
}

const LOCAL = 0x04034b50;
const CENTRAL = 0x02014b50;
const END = 0x06054b50;
const LOCAL_BYTES = 30;
const CENTRAL_BYTES = 46;
export const END_BYTES = 22;
/** The largest size and offset that a zip without the 64-bit extension can tell. */
export const ZIP_LIMIT = 0xffffffff;
export const ZIP_ENTRIES_LIMIT = 0xffff;

const VERSION_NEEDED = 20;
const UTF8_NAMES = 0x0800;
const DEFLATED = 8;
// 1 January 1980: the day on which the format's calendar begins; the time of making stands in the first entry.
const FIRST_DAY = 0x0021;

const utf8 = new TextEncoder();

const crcTable = Uint32Array.from({ length: 256 }, (_, byte) => {
  let value = byte;
  for (let bit = 0; bit < 8; bit += 1) value = value & 1 ? (value >>> 1) ^ 0xedb88320 : value >>> 1;
  return value >>> 0;
});

/** CRC-32 (ISO 3309, as in ZIP) of bytes, carried on from the CRC of those before. */
export const crc32 = (bytes: Uint8Array, before = 0): number => {
  let value = ~before;
  for (const byte of bytes) value = (value >>> 8) ^ (crcTable[(value ^ byte) & 0xff] ?? 0);
  return ~value >>> 0;
};

/** Fields from version to extra length, which the local and the central header share. */
const writeShared = (view: DataView, at: number, entry: ZipEntry, nameBytes: number): void => {
  view.setUint16(at, VERSION_NEEDED, true);
  view.setUint16(at + 2, UTF8_NAMES, true);
  view.setUint16(at + 4, DEFLATED, true);
  view.setUint16(at + 8, FIRST_DAY, true);
  view.setUint32(at + 10, entry.crc32, true);
  view.setUint32(at + 14, entry.packedBytes, true);
  view.setUint32(at + 18, entry.bytes, true);
  view.setUint16(at + 22, nameBytes, true);
};

/** The header before an entry's packed bytes (ZIP Application Note 4.3.7). */
export const localHeader = (entry: ZipEntry): Uint8Array<ArrayBuffer> => {
  const name = utf8.encode(entry.name);
  const bytes = new Uint8Array(LOCAL_BYTES + name.length);
  const view = new DataView(bytes.buffer);
  view.setUint32(0, LOCAL, true);
  writeShared(view, 4, entry, name.length);
  bytes.set(name, LOCAL_BYTES);
  return bytes;
};

/** An entry of the central directory (4.3.12). */
export const centralHeader = (entry: ZipEntry): Uint8Array<ArrayBuffer> => {
  const name = utf8.encode(entry.name);
  const bytes = new Uint8Array(CENTRAL_BYTES + name.length);
  const view = new DataView(bytes.buffer);
  view.setUint32(0, CENTRAL, true);
  view.setUint16(4, VERSION_NEEDED, true);
  writeShared(view, 6, entry, name.length);
  view.setUint32(42, entry.offset, true);
  bytes.set(name, CENTRAL_BYTES);
  return bytes;
};

/** The end of a zip, without its comment (4.3.16). */
export const endRecord = (
  entries: number,
  directory: { readonly offset: number; readonly bytes: number },
  commentBytes: number,
): Uint8Array<ArrayBuffer> => {
  const bytes = new Uint8Array(END_BYTES);
  const view = new DataView(bytes.buffer);
  view.setUint32(0, END, true);
  view.setUint16(8, entries, true);
  view.setUint16(10, entries, true);
  view.setUint32(12, directory.bytes, true);
  view.setUint32(16, directory.offset, true);
  view.setUint16(20, commentBytes, true);
  return bytes;
};

export const isLocalHeader = (start: Uint8Array): boolean =>
  start.length >= 4 && new DataView(start.buffer, start.byteOffset).getUint32(0, true) === LOCAL;

/** Where the central directory lies, by the end record; undefined where it is none. */
export const readEndRecord = (
  bytes: Uint8Array,
): { readonly entries: number; readonly offset: number; readonly bytes: number } | undefined => {
  if (bytes.length < END_BYTES) return undefined;
  const view = new DataView(bytes.buffer, bytes.byteOffset);
  if (view.getUint32(0, true) !== END) return undefined;
  return { entries: view.getUint16(10, true), bytes: view.getUint32(12, true), offset: view.getUint32(16, true) };
};

/** The entries of a central directory; undefined where it is not well formed. */
export const readCentralDirectory = (bytes: Uint8Array, count: number): readonly ZipEntry[] | undefined => {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const entries: ZipEntry[] = [];
  let at = 0;
  while (entries.length < count) {
    if (at + CENTRAL_BYTES > bytes.length || view.getUint32(at, true) !== CENTRAL) return undefined;
    const nameBytes = view.getUint16(at + 28, true);
    const end = at + CENTRAL_BYTES + nameBytes;
    if (end > bytes.length) return undefined;
    entries.push({
      name: new TextDecoder().decode(bytes.subarray(at + CENTRAL_BYTES, end)),
      crc32: view.getUint32(at + 16, true),
      packedBytes: view.getUint32(at + 20, true),
      bytes: view.getUint32(at + 24, true),
      offset: view.getUint32(at + 42, true),
    });
    at = end;
  }
  return at === bytes.length ? entries : undefined;
};

/** Where an entry's packed bytes lie. */
export const packedRange = (entry: ZipEntry): readonly [start: number, end: number] => {
  const start = entry.offset + LOCAL_BYTES + utf8.encode(entry.name).length;
  return [start, start + entry.packedBytes];
};
