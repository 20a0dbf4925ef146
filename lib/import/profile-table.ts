import type { RawRow, RawTable, ReadOptions } from '../formats/raw-table';
import { cellText } from './cell-reader';
import { columnProfiler } from './column-profiler';
import { findHeader } from './find-header';
import type { TableProfile } from './mapping';

/** Where the header may be looked for, and what happens while the table is read. */
export interface ProfileOptions extends ReadOptions {
  /** Line of the header row, where a person named it. */
  readonly headerLine?: number | undefined;
}

const LOOKED_AT = 30;
const PREAMBLE = 10;
const LONGEST = 200;

const headerOf = (row: RawRow | undefined): readonly string[] =>
  (row?.cells ?? []).map((cell) => cellText(cell).trim());

const preambleText = (row: RawRow, delimiter: string): string =>
  row.cells
    .map((cell) => cellText(cell).trim())
    .join(delimiter || ' ')
    .slice(0, LONGEST);

/** Column names, trimmed, as wide as the rows below: a last empty field that every row has beside the names is a column. */
const fitted = (
  header: readonly string[],
  widths: ReadonlyMap<number, number>,
  surplusEmpty: boolean,
): readonly string[] => {
  const [usual = header.length] = [...widths].sort((a, b) => b[1] - a[1])[0] ?? [];
  if (usual === header.length + 1 && surplusEmpty) return [...header, ''];
  return usual < header.length && header.slice(usual).every((name) => name === '') ? header.slice(0, usual) : header;
};

/**
 * One pass over a table: its header (below preamble lines, unless the format or a person says where), and what every
 * column holds. Memory does not grow with the rows. Rejects as the table's reader does.
 */
export const profileTable = async (table: RawTable, options: ProfileOptions = {}): Promise<TableProfile> => {
  const { headerLine, ...reading } = options;
  const profilers: ReturnType<typeof columnProfiler>[] = [];
  const widths = new Map<number, number>();
  const first: RawRow[] = [];
  let header: readonly string[] | undefined;
  let [line, rows, surplusEmpty] = [1, 0, true];
  const preamble: string[] = [];

  const take = (row: RawRow): void => {
    rows += 1;
    const { length } = row.cells;
    if (widths.has(length) || widths.size < 50) widths.set(length, (widths.get(length) ?? 0) + 1);
    const width = header?.length ?? 0;
    if (length === width + 1 && row.cells[width] !== '') surplusEmpty = false;
    if (row.trouble !== undefined) return;
    for (let place = 0; place < length && place < width; place += 1) {
      const cell = row.cells[place] ?? '';
      if (cell !== '') profilers[place]?.take(cell);
    }
  };
  const begin = (place: number): void => {
    const row = first[place];
    header = headerOf(row);
    line = row?.line ?? headerLine ?? 1;
    preamble.push(...first.slice(0, Math.min(place, PREAMBLE)).map((before) => preambleText(before, table.delimiter)));
    header.forEach(() => profilers.push(columnProfiler()));
    first.slice(place + 1).forEach(take);
  };
  const settle = (atEnd: boolean): void => {
    if (header !== undefined || first.length === 0) return;
    if (headerLine !== undefined) {
      const place = first.findIndex((row) => row.line >= headerLine);
      if (place >= 0 || atEnd) begin(Math.max(0, place));
    } else if (table.headed) begin(0);
    else if (atEnd || first.length >= LOOKED_AT) begin(findHeader(first));
  };

  for await (const batch of table.rows(reading)) {
    for (const row of batch) {
      if (header !== undefined) take(row);
      else {
        first.push(row);
        settle(false);
      }
    }
  }
  settle(true);
  const names = fitted(header ?? [], widths, surplusEmpty);
  return {
    headerLine: line,
    header: names,
    rows,
    preamble,
    columns: names.map((name, place) => (profilers[place] ?? columnProfiler()).profile(place, name)),
  };
};
