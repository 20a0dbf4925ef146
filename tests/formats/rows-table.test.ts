import { describe, expect, test } from 'vitest';
import type { RawRow } from '../../lib/formats/raw-table';
import { rowsTable } from '../../lib/formats/rows/rows-table';
import { writeRows } from '../../lib/formats/rows/write-rows';
import { rowsOf } from './read-table';

async function* inBatches(rows: readonly RawRow[], size: number): AsyncGenerator<readonly RawRow[]> {
  for (let at = 0; at < rows.length; at += size) yield await Promise.resolve(rows.slice(at, at + size));
}

const written = async (rows: readonly RawRow[]): Promise<string> => {
  let text = '';
  for await (const piece of writeRows(inBatches(rows, 2))) text += piece;
  return text;
};

describe('rows that are written anew', () => {
  const ROWS: readonly RawRow[] = [
    { line: 3, cells: ['id', 'a "b"\nc', ''] },
    { line: 9, cells: ['Zoë', 70.3, true] },
    { line: 10, cells: ['2', '"open'], trouble: 'broken_quote' },
    { line: 12, cells: ['', -0.5, false] },
  ];

  test('keep their lines, types and troubles', async () => {
    expect(await rowsOf(rowsTable('', new Blob([await written(ROWS)])))).toEqual(ROWS);
  });

  test('are one line each below a line that names the format', async () => {
    const lines = (await written(ROWS)).split('\n');
    expect(lines[0]).toBe('{"driftline":"rows","version":1}');
    expect(lines[2]).toBe('[9,"Zoë",70.3,true]');
    expect(lines.length).toBe(ROWS.length + 2);
  });

  test.each([
    ['a line cut off', '[2,"a'],
    ['a line without its number', '["a","b"]'],
    ['a cell that is a list', '[2,["a"]]'],
    ['no list', '{"line":2}'],
  ])('are damaged by %s', async (_, line) => {
    const table = rowsTable('', new Blob([`${await written(ROWS)}${line}\n`]));
    await expect(rowsOf(table)).rejects.toMatchObject({ name: 'DamagedFile' });
  });
});
