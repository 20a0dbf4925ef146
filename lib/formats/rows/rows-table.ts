import { textLines } from '../text-lines';
import { DamagedFile, type RawCell, type RawRow, type RawTable, type ReadOptions } from '../raw-table';
import { rowBatches } from '../row-batches';

const isCell = (value: unknown): value is RawCell =>
  typeof value === 'string' || typeof value === 'boolean' || (typeof value === 'number' && Number.isFinite(value));

const parsed = (text: string): unknown => {
  try {
    return JSON.parse(text);
  } catch (cause) {
    throw new DamagedFile('A line of the file is not JSON.', { cause });
  }
};

const rowOf = (text: string): RawRow => {
  const value = parsed(text);
  const [line, ...rest] = Array.isArray(value) ? (value as unknown[]) : [];
  const [inner, trouble] = rest;
  const isTrouble = Array.isArray(inner) && trouble === 'broken_quote';
  const cells: unknown[] = isTrouble ? inner : rest;
  if (!Number.isInteger(line) || !cells.every(isCell)) throw new DamagedFile('A line of the file is no row.');
  return { line: Number(line), cells, ...(isTrouble ? { trouble: 'broken_quote' } : {}) };
};

async function* rowsOf(blob: Blob, options: ReadOptions): AsyncGenerator<readonly RawRow[]> {
  let isHead = true;
  for await (const lines of textLines(blob, options)) {
    const body = isHead ? lines.slice(1) : lines;
    isHead = isHead && lines.length === 0;
    yield body.filter((text) => text !== '').map(rowOf);
  }
}

/** A table that `writeRows` wrote: its rows with the lines and types that they had. `headed` as it was. */
export const rowsTable = (name: string, blob: Blob): RawTable => ({
  name,
  format: 'rows',
  encoding: 'UTF-8',
  delimiter: '',
  headed: false,
  rows: (given = {}) => rowBatches(rowsOf(blob, given), given),
});
