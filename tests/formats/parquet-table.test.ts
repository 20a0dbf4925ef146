import { parquetWriteBuffer, type ColumnSource } from 'hyparquet-writer';
import { compressors } from 'hyparquet-compressors';
import { gzipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { parquetTable } from '../../lib/formats/parquet/parquet-table';
import { cellsOf, rowsOf } from './read-table';

const COLUMNS: ColumnSource[] = [
  { name: 'client_id', data: ['Zoë', 'C-2', null], type: 'STRING' },
  { name: 'weight_kg', data: [70.3, null, 81], type: 'DOUBLE' },
  { name: 'r_ohm', data: Float32Array.from([512.4, 0.1, 480]), type: 'FLOAT' },
  { name: 'reading', data: [1, 2, 3], type: 'INT32' },
  { name: 'big', data: [9007199254740993n, 5n, -7n], type: 'INT64' },
  { name: 'rested', data: [true, false, null], type: 'BOOLEAN' },
  {
    name: 'seen',
    data: ['2025-03-04T08:30:15.250Z', '1969-12-31T23:59:59Z', '2000-01-01T00:00:00Z'].map((text) => new Date(text)),
    type: 'TIMESTAMP',
  },
];
const CELLS = [
  ['client_id', 'weight_kg', 'r_ohm', 'reading', 'big', 'rested', 'seen'],
  ['Zoë', 70.3, 512.4, 1, '9007199254740993', true, '2025-03-04T08:30:15'],
  ['C-2', '', 0.1, 2, 5, false, '1969-12-31T23:59:59'],
  ['', 81, 480, 3, -7, '', '2000-01-01T00:00:00'],
];

const tableOf = (options: Parameters<typeof parquetWriteBuffer>[0]) =>
  parquetTable('', new Blob([parquetWriteBuffer(options)]));

describe('a Parquet file', () => {
  test('gives its column names and typed cells', async () => {
    const table = await tableOf({ columnData: COLUMNS });
    expect(table).toMatchObject({ format: 'Parquet', headed: true });
    expect(await cellsOf(table)).toEqual(CELLS);
    expect((await rowsOf(table)).map(({ line }) => line)).toEqual([1, 2, 3, 4]);
  });

  test('may be unpacked or packed by GZIP', async () => {
    expect(await cellsOf(await tableOf({ columnData: COLUMNS, codec: 'UNCOMPRESSED' }))).toEqual(CELLS);
    const packed = await tableOf({
      columnData: COLUMNS,
      codec: 'GZIP',
      compressors: { GZIP: (bytes) => gzipSync(bytes) },
    });
    expect(await cellsOf(packed)).toEqual(CELLS);
  });

  test('gives dates, times of day and exact decimals', async () => {
    const table = await tableOf({
      schema: [
        { name: 'root', num_children: 4 },
        { name: 'day', type: 'INT32', converted_type: 'DATE', repetition_type: 'OPTIONAL' },
        { name: 'clock', type: 'INT32', converted_type: 'TIME_MILLIS', repetition_type: 'OPTIONAL' },
        {
          name: 'waist',
          type: 'INT32',
          converted_type: 'DECIMAL',
          scale: 2,
          precision: 9,
          repetition_type: 'OPTIONAL',
        },
        { name: 'id', type: 'INT64', converted_type: 'DECIMAL', scale: 0, precision: 18, repetition_type: 'OPTIONAL' },
      ],
      columnData: [
        { name: 'day', data: [new Date('2025-03-04'), null] },
        { name: 'clock', data: Int32Array.from([30_600_000, 0]) },
        { name: 'waist', data: [95.15, -0.05] },
        { name: 'id', data: [123456789, 7] },
      ],
    });
    expect(await cellsOf(table)).toEqual([
      ['day', 'clock', 'waist', 'id'],
      ['2025-03-04', '08:30:00', 95.15, 123456789],
      ['', '00:00:00', -0.05, 7],
    ]);
  });

  test('of several row groups keeps their order', async () => {
    const data = Int32Array.from({ length: 120_000 }, (_, index) => index);
    const table = await tableOf({ columnData: [{ name: 'n', data, type: 'INT32' }], rowGroupSize: [1000, 110_000] });
    const rows = await rowsOf(table);
    expect(rows.length).toBe(120_001);
    expect(rows.slice(1).every(({ line, cells }, index) => cells[0] === index && line === index + 2)).toBe(true);
  });

  test('tells its bytes and can be cancelled', async () => {
    const data = Int32Array.from({ length: 20_000 }, (_, index) => index);
    const table = await tableOf({ columnData: [{ name: 'n', data, type: 'INT32' }], rowGroupSize: 10_000 });
    const seen: number[] = [];
    for await (const _ of table.rows({ onBytes: (bytes) => seen.push(bytes) })) continue;
    expect(seen.length).toBe(2);
    const reading = (async () => {
      for await (const _ of table.rows({ signal: AbortSignal.abort() })) continue;
    })();
    await expect(reading).rejects.toMatchObject({ name: 'AbortError' });
  });

  test('is decoded by a codec for each way of packing that is common', () => {
    expect(Object.keys(compressors).sort()).toEqual(['BROTLI', 'GZIP', 'LZ4', 'LZ4_RAW', 'SNAPPY', 'ZSTD']);
  });
});
