import type { RawRow, RawTable, ReadOptions } from '../formats/raw-table';
import { cellText } from './cell-reader';
import { columnProfiler } from './column-profiler';
import { findHeader } from './find-header';
import { joinHeadings, type Headings } from './join-headings';
import type { TableProfile } from './mapping';
import { readDate } from './read-date';
import { isSummaryWord } from './summary-words';
import { MOST_COLUMNS } from './too-wide';

/** Where the header may be looked for, and what happens while the table is read. */
export interface ProfileOptions extends ReadOptions {
  /** Line of the header row, where a person named it. */
  readonly headerLine?: number | undefined;
}

const LOOKED_AT = 30;
const PREAMBLE = 10;
const LONGEST = 200;
const DATE_ORDERS_LOOKED_AT = ['ymd', 'dmy', 'mdy'] as const;

const headerOf = (row: RawRow | undefined): readonly string[] =>
  (row?.cells ?? []).map((cell) => cellText(cell).trim());

/** A cell far to the right of the others is no column of the table. */
const LONGEST_GAP = 500;

const withoutStray = (header: readonly string[]): readonly string[] => {
  let last = -1;
  for (const [place, name] of header.entries()) {
    if (name === '') continue;
    if (last >= 0 && place - last > LONGEST_GAP) return header.slice(0, last + 1);
    last = place;
  }
  return header.length - last > LONGEST_GAP ? header.slice(0, last + 1) : header;
};

const preambleText = (row: RawRow, delimiter: string): string =>
  row.cells
    .map((cell) => cellText(cell).trim())
    .join(delimiter || ' ')
    .slice(0, LONGEST);

/** A line of totals has no date; a visit of somebody whose first name is `Max` has. */
const isSummaryRow = ({ cells }: RawRow): boolean =>
  isSummaryWord(cells[0] ?? '') &&
  !cells.some((cell) => typeof cell === 'string' && DATE_ORDERS_LOOKED_AT.some((order) => readDate(cell, order)));

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
    if (row.trouble !== undefined || isSummaryRow(row)) return;
    for (let place = 0; place < length && place < width; place += 1) {
      const cell = row.cells[place] ?? '';
      if (cell !== '') profilers[place]?.take(cell);
    }
  };
  const begin = ({ names, last: place }: Headings): void => {
    header = withoutStray(names);
    line = first[place]?.line ?? headerLine ?? 1;
    preamble.push(...first.slice(0, Math.min(place, PREAMBLE)).map((before) => preambleText(before, table.delimiter)));
    if (header.length <= MOST_COLUMNS) header.forEach(() => profilers.push(columnProfiler()));
    first.slice(place + 1).forEach(take);
  };
  const literal = (place: number): Headings => ({ names: headerOf(first[place]), last: place });
  const settle = (atEnd: boolean): void => {
    if (header !== undefined || first.length === 0) return;
    if (headerLine !== undefined) {
      const place = first.findIndex((row) => row.line >= headerLine);
      if (place < 0 && !atEnd) return;
      const own = joinHeadings(first, findHeader(first));
      begin(own.last === place ? own : literal(Math.max(0, place)));
    } else if (table.headed) begin(literal(0));
    else if (atEnd || first.length >= LOOKED_AT) begin(joinHeadings(first, findHeader(first)));
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
    columns:
      names.length > MOST_COLUMNS
        ? []
        : names.map((name, place) => (profilers[place] ?? columnProfiler()).profile(place, name)),
  };
};
