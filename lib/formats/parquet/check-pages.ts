import type { ColumnChunk, Compressors, FileMetaData, PageHeader, SchemaTree } from 'hyparquet';
import { parquetHeader } from 'hyparquet/src/column.js';
import { decompressPage } from 'hyparquet/src/datapage.js';
import { getMaxDefinitionLevel, getMaxRepetitionLevel, getSchemaPath } from 'hyparquet/src/schema.js';
import { blobBytes } from '../blob-chunks';
import { DamagedFile } from '../raw-table';
import { checkRuns } from './check-runs';

const LARGEST_PAGE = 2 ** 30;

const bitsFor = (level: number): number => 32 - Math.clz32(level);

interface Levels {
  readonly repetition: number;
  readonly definition: number;
}

const count = (value: unknown, most: number): number => {
  if (typeof value !== 'number' || !Number.isInteger(value) || value < 0 || value > most)
    throw new DamagedFile('A page of the file has no possible size.');
  return value;
};

/** A section that begins with its length: the length, and where the next one begins. */
const lengthAt = (page: Uint8Array, at: number): number => {
  if (at + 4 > page.length) throw new DamagedFile('A page ends before its values.');
  return count(new DataView(page.buffer, page.byteOffset).getUint32(at, true), page.length - at - 4);
};

const checkValues = (page: Uint8Array, encoding: string, isBoolean: boolean, values: number): void => {
  const isDictionary = encoding === 'RLE_DICTIONARY' || encoding === 'PLAIN_DICTIONARY';
  if (isDictionary && values > 0 && (page[0] ?? 0) > 0) checkRuns(page.subarray(1), page[0] ?? 0, values);
  if (encoding === 'RLE' && isBoolean && values > 0) checkRuns(page.subarray(4, 4 + lengthAt(page, 0)), 1, values);
};

/** Data page of version 1: levels and values are packed together, each kind of level behind its length. */
const checkFirst = (page: Uint8Array, header: PageHeader, levels: Levels, isBoolean: boolean, most: number): number => {
  const values = count(header.data_page_header?.num_values, most);
  let at = 0;
  for (const level of [levels.repetition, levels.definition]) {
    if (level === 0) continue;
    const length = lengthAt(page, at);
    checkRuns(page.subarray(at + 4, at + 4 + length), bitsFor(level), values);
    at += 4 + length;
  }
  // How many are null is not known here: a page of nulls alone has no runs of values.
  const encoding = header.data_page_header?.encoding ?? '';
  if (levels.definition === 0) checkValues(page.subarray(at), encoding, isBoolean, values);
  else checkAtMost(page.subarray(at), encoding, isBoolean, values);
  return values;
};

/** As `checkValues`, where fewer values than these may follow. */
const checkAtMost = (page: Uint8Array, encoding: string, isBoolean: boolean, values: number): void => {
  try {
    checkValues(page, encoding, isBoolean, values);
  } catch (error) {
    if (!(error instanceof DamagedFile) || error.message.includes('too long')) throw error;
  }
};

/** Data page of version 2: the levels stand unpacked in front. */
const checkSecond = (
  packed: Uint8Array,
  header: PageHeader,
  levels: Levels,
  isBoolean: boolean,
  unpack: (bytes: Uint8Array, size: number) => Uint8Array,
  most: number,
): number => {
  const page = header.data_page_header_v2;
  const values = count(page?.num_values, most);
  const nulls = count(page?.num_nulls, values);
  count(page?.num_rows, values);
  const repetition = count(page?.repetition_levels_byte_length, packed.length);
  const definition = count(page?.definition_levels_byte_length, packed.length - repetition);
  const start = repetition + definition;
  if (levels.repetition > 0) checkRuns(packed.subarray(0, repetition), bitsFor(levels.repetition), values);
  if (levels.definition > 0) checkRuns(packed.subarray(repetition, start), bitsFor(levels.definition), values);
  const size = count(header.uncompressed_page_size - start, LARGEST_PAGE);
  const body = page?.is_compressed === false ? packed.subarray(start) : unpack(packed.subarray(start), size);
  checkValues(body, page?.encoding ?? '', isBoolean, values - nulls);
  return values;
};

const checkChunk = async (
  blob: Blob,
  { meta_data: chunk }: ColumnChunk,
  path: readonly SchemaTree[],
  compressors: Compressors,
): Promise<void> => {
  if (chunk === undefined) throw new DamagedFile('A column of the file is not described.');
  const tree = [...path];
  const levels = { repetition: getMaxRepetitionLevel(tree), definition: getMaxDefinitionLevel(tree) };
  const start = Number(chunk.dictionary_page_offset ?? 0n) || Number(chunk.data_page_offset);
  const bytes = await blobBytes(blob, start, start + Number(chunk.total_compressed_size));
  const reader = { view: new DataView(bytes.buffer), offset: 0 };
  const unpack = (packed: Uint8Array, size: number): Uint8Array =>
    decompressPage(packed, size, chunk.codec, compressors);
  const most = Number(chunk.num_values);
  for (let left = most; left > 0 && reader.offset < bytes.length - 1;) {
    const header = parquetHeader(reader);
    const size = count(header.compressed_page_size, bytes.length - reader.offset);
    const packed = bytes.subarray(reader.offset, reader.offset + size);
    reader.offset += size;
    const unpacked = count(header.uncompressed_page_size, LARGEST_PAGE);
    const isBoolean = chunk.type === 'BOOLEAN';
    if (header.type === 'DICTIONARY_PAGE') count(header.dictionary_page_header?.num_values, LARGEST_PAGE);
    if (header.type === 'DATA_PAGE') left -= checkFirst(unpack(packed, unpacked), header, levels, isBoolean, left);
    if (header.type === 'DATA_PAGE_V2') left -= checkSecond(packed, header, levels, isBoolean, unpack, left);
  }
};

/**
 * Walks over the pages of a row group before they are decoded. Rejects with a `DamagedFile` (or the decoder's own error)
 * where a page's sizes or runs are impossible: the decoder trusts them, and would run or allocate without end.
 */
export const checkPages = async (
  blob: Blob,
  metadata: FileMetaData,
  group: number,
  compressors: Compressors,
): Promise<void> => {
  for (const column of metadata.row_groups[group]?.columns ?? []) {
    const path = getSchemaPath(metadata.schema, column.meta_data?.path_in_schema ?? []);
    await checkChunk(blob, column, path, compressors);
  }
};
