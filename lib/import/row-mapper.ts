import type { RawCell, RawRow, RawTable } from '../formats/raw-table';
import { cellReader, cellText, wordsMadeUnknown, type CellReader } from './cell-reader';
import { COLUMNS } from './columns';
import type { ColumnMapping, Mapping, SourceUnit } from './mapping';
import { lineKinds, type LineKind } from './line-kind';
import { mappingConversions, type Conversion } from './mapping-conversions';
import { isMissingWord } from './missing-words';
import { otherUnit } from './number-cell';
import { lookupWord } from './plain-text';
import { RESOLUTION_COLUMNS } from './readings-sql';
import { sourceResolution, type SourceResolution } from './source-resolution';
import { unknownPlaces } from './unknown-places';

/** A cell that became something which its column's conversion does not explain. */
export interface ChangedCell {
  readonly column: string;
  readonly from: string;
  readonly to: string;
  readonly code: string;
}

/** One reading (or enrolment) in canonical columns. */
export interface MappedRow {
  readonly line: number;
  /** 0, or the reading's number where one line holds several. */
  readonly part: number;
  /** In the order of COLUMNS, '' unknown, in canonical spelling; what could not be read stands as it was written. */
  readonly cells: readonly string[];
  /** Cells of the unknown columns, joined by U+001F. */
  readonly extra: string;
  readonly changed: readonly ChangedCell[];
  /** The record cannot be a row: its fields do not fit the header, its quotes or its length are out of order. */
  readonly trouble?: 'broken_quote' | 'ragged' | 'too_long' | LineKind;
  readonly excerpt?: string;
}

export interface RowMapper {
  /** Headings of the columns that are kept verbatim and not used. */
  readonly unknownColumns: readonly string[];
  readonly conversions: readonly Conversion[];
  /** Words for a missing value that were read as unknown so far, with the number of cells. */
  unknownCells(): readonly { readonly column: string; readonly word: string; readonly cells: number }[];
  /** Of columns with converted cells the smallest step in which they were written, in the column's own unit. */
  resolutions(): readonly { readonly column: string; readonly step: number }[];
  /** The readings of a row below the header: none, one, or several in the wide shape. */
  map(row: RawRow): readonly MappedRow[];
}

interface Filled {
  readonly index: number;
  readonly column: string;
  readonly from: readonly number[];
  readonly read: CellReader;
  readonly unknown: ReadonlySet<string>;
  /** The unit that a cell names itself where it is not the column's. */
  readonly foreign: (text: string) => SourceUnit | undefined;
  readonly resolution: SourceResolution | undefined;
}

const INDEX = new Map(COLUMNS.map((column, index) => [column.name, index]));
const OF_RESOLUTION: ReadonlySet<string> = new Set(RESOLUTION_COLUMNS);
const EXCERPT = 80;
/** The database takes no line of more than 16 MiB. */
const LONGEST_ROW = 1_000_000;
const NOTHING: readonly ChangedCell[] = [];

/** A time that is taken out of a date's cells is read in that date's order. */
const inDateOrder = (mapped: ColumnMapping, columns: Mapping['columns']): ColumnMapping => {
  if (mapped.to !== 'visit_time' || mapped.dateOrder !== undefined) return mapped;
  const date = columns.find(({ to, from }) => to === 'visit_date' && from[0] === mapped.from[0]);
  return date?.dateOrder === undefined ? mapped : { ...mapped, dateOrder: date.dateOrder };
};

const filledBy = (columns: Mapping['columns']): readonly Filled[] =>
  columns.flatMap((given) => {
    const mapped = inDateOrder(given, columns);
    const index = INDEX.get(mapped.to);
    const column = index === undefined ? undefined : COLUMNS[index];
    if (index === undefined || column === undefined) return [];
    const read = cellReader(column, mapped);
    const isNumber = column.type === 'number';
    const foreign = (text: string): SourceUnit | undefined =>
      isNumber ? otherUnit(text.trim(), column, mapped) : undefined;
    const isPlain = mapped.decimal === undefined && (mapped.unit ?? column.unit) === column.unit;
    const isBound = isNumber && !isPlain && OF_RESOLUTION.has(mapped.to);
    const resolution = isBound ? sourceResolution(column, mapped, foreign) : undefined;
    const unknown = wordsMadeUnknown(column, mapped);
    return [{ index, column: mapped.to, from: mapped.from, read, unknown, foreign, resolution }];
  });

const sourceCell = (cells: readonly RawCell[], from: readonly number[]): RawCell => {
  if (from.length === 1) return cells[from[0] ?? 0] ?? '';
  return from
    .map((place) => cellText(cells[place] ?? '').trim())
    .filter((text) => text !== '')
    .join(' ');
};

const isLong = (cells: readonly RawCell[]): boolean => {
  let length = 0;
  for (const cell of cells) length += typeof cell === 'string' ? cell.length : 8;
  return length > LONGEST_ROW;
};

/**
 * Makes rows of any table canonical as the mapping says. `table` tells how short rows are read: typed formats leave out
 * trailing empty cells, in delimited text another number of fields than the header's is `ragged`.
 */
export const createRowMapper = (
  mapping: Mapping,
  table: Pick<RawTable, 'format' | 'delimiter'> = { format: 'CSV', delimiter: ',' },
): RowMapper => {
  const width = mapping.header.length;
  const padded = table.format !== 'CSV';
  const unknown = unknownPlaces(mapping);
  const blank = COLUMNS.map(({ name }) => mapping.constants.find(({ to }) => to === name)?.value ?? '');
  const shared = filledBy(mapping.columns.filter((mapped) => mapped.reading === undefined));
  const numbers = [...new Set(mapping.columns.flatMap(({ reading }) => reading ?? []))].sort((a, b) => a - b);
  const parts = numbers.map((number) => ({
    number,
    filled: filledBy(mapping.columns.filter(({ reading }) => reading === number)),
  }));
  const readingIndex = INDEX.get('reading') ?? -1;
  const excerptOf = (cells: readonly RawCell[]): string =>
    cells
      .map((cell) => cellText(cell).slice(0, EXCERPT))
      .join(table.delimiter || ' ')
      .slice(0, EXCERPT);
  const kindOf = lineKinds(mapping);
  const troubleOf = (row: RawRow): MappedRow['trouble'] => {
    if (row.trouble !== undefined) return row.trouble;
    const { cells } = row;
    const kind = kindOf(cells);
    if (kind !== undefined) return kind;
    if (cells.length < width && !padded) return 'ragged';
    if (cells.length > width && cells.slice(width).some((cell) => cellText(cell).trim() !== '')) return 'ragged';
    return isLong(cells) ? 'too_long' : undefined;
  };
  const unknownCounts = new Map<string, Map<string, number>>();
  const countUnknown = (column: string, word: string): void => {
    if (!isMissingWord(word)) return;
    const counts = unknownCounts.get(column) ?? new Map<string, number>();
    unknownCounts.set(column, counts.set(word, (counts.get(word) ?? 0) + 1));
  };
  const fill = (into: string[], filled: readonly Filled[], cells: readonly RawCell[]): readonly ChangedCell[] => {
    let changed: ChangedCell[] | undefined;
    for (const { index, column, from, read, unknown: silenced, foreign, resolution } of filled) {
      const cell = sourceCell(cells, from);
      if (cell === '') continue;
      const to = read(cell);
      into[index] = to;
      if (to === '') countUnknown(column, cellText(cell).trim());
      else resolution?.take(cell);
      if (typeof cell === 'string' && to !== cell && foreign(cell) !== undefined)
        (changed ??= []).push({ column, from: cell, to, code: 'own_unit' });
      if (silenced.size > 0 && silenced.has(lookupWord(cellText(cell)))) {
        (changed ??= []).push({ column, from: cellText(cell), to, code: 'word_made_unknown' });
      }
    }
    return changed ?? NOTHING;
  };
  return {
    unknownColumns: unknown.map((place) => mapping.header[place] ?? ''),
    conversions: mappingConversions(mapping),
    resolutions: () =>
      [...shared, ...parts.flatMap(({ filled }) => filled)].flatMap(({ column, resolution }) => {
        const step = resolution?.value();
        return step === undefined ? [] : [{ column, step }];
      }),
    unknownCells: () =>
      [...unknownCounts].flatMap(([column, counts]) => [...counts].map(([word, cells]) => ({ column, word, cells }))),
    map: (row) => {
      const { line } = row;
      const trouble = troubleOf(row);
      if (trouble !== undefined) {
        const cells = COLUMNS.map(() => '');
        return [{ line, part: 0, cells, extra: '', changed: NOTHING, trouble, excerpt: excerptOf(row.cells) }];
      }
      const cells = blank.slice();
      const changed = fill(cells, shared, row.cells);
      const extra = unknown.length === 0 ? '' : unknown.map((place) => cellText(row.cells[place] ?? '')).join('\u001F');
      if (parts.length === 0) return [{ line, part: 0, cells, extra, changed }];
      const readings = parts.flatMap(({ number, filled }) => {
        if (filled.every(({ from }) => cellText(sourceCell(row.cells, from)).trim() === '')) return [];
        const own = cells.slice();
        own[readingIndex] = String(number);
        const also = fill(own, filled, row.cells);
        return [{ line, part: number, cells: own, extra, changed: [...changed, ...also] }];
      });
      return readings.length === 0 ? [{ line, part: 0, cells, extra, changed }] : readings;
    },
  };
};
