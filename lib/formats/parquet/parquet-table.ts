import {
  parquetMetadataAsync,
  parquetRead,
  parquetSchema,
  type Compressors,
  type FileMetaData,
  type SchemaElement,
} from 'hyparquet';
import { blobBytes } from '../blob-chunks';
import { DamagedFile, type RawRow, type RawTable, type ReadOptions } from '../raw-table';
import { rowBatches } from '../row-batches';
import { checkPages } from './check-pages';
import { isoParsers, parquetCell } from './parquet-cell';

/** Rows that are decoded at a time. */
const PIECE = 50_000;
const MOST_ROWS = 200_000_000;
const LARGEST_CHUNK = 2 ** 31;

interface ParquetColumn {
  readonly element: SchemaElement;
  readonly scale: number | null;
}

const asyncBuffer = (blob: Blob) => ({
  byteLength: blob.size,
  slice: (start: number, end?: number): Promise<ArrayBuffer> => {
    const part = blobBytes(blob, start, end).then(({ buffer }) => buffer);
    // Parts are asked for ahead and may never be waited for: a missing one must not count as unhandled.
    part.catch(() => undefined);
    return part;
  },
});

/** Decimals are taken as they are stored, for as doubles they lose digits. */
const columnsOf = (metadata: FileMetaData): readonly ParquetColumn[] =>
  parquetSchema(metadata).children.map(({ element }) => {
    const isDecimal = element.converted_type === 'DECIMAL' || element.logical_type?.type === 'DECIMAL';
    if (!isDecimal) return { element, scale: null };
    const scale = element.scale ?? 0;
    delete element.converted_type;
    delete element.logical_type;
    return { element, scale };
  });

const checkSizes = (metadata: FileMetaData, bytes: number): void => {
  let rows = 0;
  for (const group of metadata.row_groups) {
    rows += Number(group.num_rows);
    for (const { meta_data: chunk } of group.columns) {
      const [packed, unpacked] = [
        Number(chunk?.total_compressed_size ?? 0),
        Number(chunk?.total_uncompressed_size ?? 0),
      ];
      const isPlausible = packed >= 0 && packed <= bytes && unpacked >= 0 && unpacked <= LARGEST_CHUNK;
      if (!isPlausible) throw new DamagedFile('A column of the file has no possible size.');
    }
  }
  if (rows !== Number(metadata.num_rows) || rows < 0 || rows > MOST_ROWS)
    throw new DamagedFile('The file does not say how many rows it has.');
};

const orDamaged = async <T>(work: Promise<T>): Promise<T> => {
  try {
    return await work;
  } catch (cause) {
    if (cause instanceof DamagedFile) throw cause;
    throw new DamagedFile('The file cannot be decoded.', { cause });
  }
};

/** Snappy is decoded without WebAssembly; the other codecs come when a file needs one. */
const compressorsFor = async (metadata: FileMetaData): Promise<Compressors> => {
  const codecs = new Set(
    metadata.row_groups.flatMap(({ columns }) => columns.map((column) => column.meta_data?.codec)),
  );
  if ([...codecs].every((codec) => codec === undefined || codec === 'UNCOMPRESSED' || codec === 'SNAPPY')) return {};
  const { SNAPPY: _, ...others } = (await import('hyparquet-compressors')).compressors;
  return others;
};

async function* pieces(
  blob: Blob,
  metadata: FileMetaData,
  columns: readonly ParquetColumn[],
  { signal, onBytes }: ReadOptions,
): AsyncGenerator<readonly RawRow[]> {
  yield [{ line: 1, cells: columns.map(({ element }) => element.name) }];
  const compressors = await orDamaged(compressorsFor(metadata));
  const file = asyncBuffer(blob);
  const total = Number(metadata.num_rows);
  let groupStart = 0;
  for (const [index, group] of metadata.row_groups.entries()) {
    signal?.throwIfAborted();
    await orDamaged(checkPages(blob, metadata, index, compressors));
    const groupEnd = groupStart + Number(group.num_rows);
    for (let start = groupStart; start < groupEnd; start += PIECE) {
      signal?.throwIfAborted();
      const end = Math.min(start + PIECE, groupEnd);
      let rows: readonly (readonly unknown[])[] = [];
      const settings = { file, metadata, rowStart: start, rowEnd: end, compressors, parsers: isoParsers, utf8: false };
      await orDamaged(
        parquetRead({
          ...settings,
          onComplete: (read: readonly (readonly unknown[])[]) => {
            rows = read;
          },
        }),
      );
      if (rows.length !== end - start) throw new DamagedFile('A part of the file has fewer rows than it says.');
      onBytes?.(Math.round((blob.size * end) / total));
      yield rows.map((values, row) => ({
        line: start + row + 2,
        cells: columns.map(({ element, scale }, place) => parquetCell(values[place], element, scale)),
      }));
    }
    groupStart = groupEnd;
  }
}

/**
 * A Parquet file as a table, its column names as the first row. Dates and times as ISO text, decimals as numbers (as text
 * above 15 digits), nested values as JSON. Some thousand rows are decoded at a time. Rejects with a `DamagedFile`.
 *
 * Source: Apache Parquet format, LogicalTypes.md.
 */
export const parquetTable = async (name: string, blob: Blob): Promise<RawTable> => {
  const metadata = await orDamaged(parquetMetadataAsync(asyncBuffer(blob)));
  checkSizes(metadata, blob.size);
  const columns = columnsOf(metadata);
  return {
    name,
    format: 'Parquet',
    encoding: '',
    delimiter: '',
    headed: true,
    rows: (given = {}) => rowBatches(pieces(blob, metadata, columns, given), given),
  };
};
