import { DamagedFile, type RawCell, type RawRow, type ReadOptions } from '../raw-table';
import { unpack } from '../zip/unpack';
import { parseXml } from './parse-xml';
import type { Sheet, Workbook } from './read-workbook';
import { unescapeText } from './rich-text';
import { serialToIso } from './serial-to-iso';

const COLUMNS = 16_384;
/** No row is longer than this: 16,384 cells of 4,000 characters. */
const LONGEST_ROW = 64 * 1024 * 1024;
const PADDED = 100;

const columnOf = (reference: string): number => {
  let column = 0;
  for (const sign of reference) {
    const letter = sign.charCodeAt(0) - 64;
    if (letter < 1 || letter > 26) break;
    column = 26 * column + letter;
  }
  return column - 1;
};

const END_OF_ROW = /<\/(?:\w+:)?row>$/;

/** Where the last complete row ends; 0 where none does. */
const endOfRows = (text: string): number => {
  for (let at = text.lastIndexOf('row>'); at > 0; at = text.lastIndexOf('row>', at - 1))
    if (END_OF_ROW.test(text.slice(Math.max(0, at - 40), at + 4))) return at + 4;
  return 0;
};

/** Texts in pieces that end where a row ends, without what stands before the rows and after them. */
async function* rowTexts(blob: Blob, sheet: Sheet, options: ReadOptions): AsyncGenerator<string> {
  const decoder = new TextDecoder();
  let text = '';
  let place: 'before' | 'rows' | 'after' = 'before';
  for await (const piece of unpack(blob, sheet.entry, options)) {
    // What follows the rows is read to its end for the check sum alone.
    if (place === 'after') continue;
    text += decoder.decode(piece, { stream: true });
    if (text.length > LONGEST_ROW) throw new DamagedFile('A row of a sheet has no end.');
    if (place === 'before') {
      const start = /<(?:\w+:)?sheetData\s*(\/?)>/.exec(text);
      if (start === null) continue;
      place = start[1] === '/' ? 'after' : 'rows';
      text = text.slice(start.index + start[0].length);
    }
    const end = text.search(/<\/(?:\w+:)?sheetData/);
    if (end >= 0) place = 'after';
    const cut = end < 0 ? endOfRows(text) : end;
    if (cut > 0) yield text.slice(0, cut);
    text = text.slice(cut);
  }
  if (place !== 'after') throw new DamagedFile('The rows of a sheet have no end.');
}

interface OpenCell {
  readonly column: number;
  readonly type: string;
  readonly style: number;
}

const cellValue = (text: string, { type, style }: OpenCell, workbook: Workbook): RawCell => {
  if (type === 's') return workbook.texts[Number(text)] ?? '';
  if (type === 'str' || type === 'inlineStr') return unescapeText(text);
  if (type === 'b') return text.trim() === '1' || text.trim() === 'true';
  if (type === 'd') return text.trim().replace(/T00:00:00(\.0+)?Z?$/, '');
  const number = Number(text);
  if (type === 'e' || text.trim() === '' || !Number.isFinite(number)) return text.trim();
  return serialToIso(number, workbook.kinds[style] ?? 'number', workbook.is1904);
};

const rowsIn = (xml: string, workbook: Workbook, before: number): readonly RawRow[] => {
  const rows: RawRow[] = [];
  let line = before;
  let cells: RawCell[] = [];
  let cell: OpenCell | null = null;
  let [text, inValue, inPhonetic] = ['', false, false];
  parseXml(`<rows>${xml}</rows>`, {
    open: (name, attribute) => {
      if (name === 'row') {
        line = Number(attribute('r') ?? line + 1);
        if (!Number.isInteger(line)) throw new DamagedFile('A row of a sheet has no number.');
        cells = [];
      } else if (name === 'c') {
        const reference = attribute('r');
        const column = reference === undefined ? cells.length : columnOf(reference);
        if (column < 0 || column >= COLUMNS) throw new DamagedFile('A cell of a sheet has no place.');
        cell = { column, type: attribute('t') ?? 'n', style: Number(attribute('s') ?? 0) };
        text = '';
      } else if (name === 'v' || name === 't') inValue = true;
      else if (name === 'rPh') inPhonetic = true;
    },
    text: (piece) => {
      if (inValue && !inPhonetic) text += piece;
    },
    close: (name) => {
      if (name === 'v' || name === 't') inValue = false;
      else if (name === 'rPh') inPhonetic = false;
      else if (name === 'c' && cell !== null) {
        while (cells.length < cell.column) cells.push('');
        cells[cell.column] = text === '' ? '' : cellValue(text, cell, workbook);
        cell = null;
      } else if (name === 'row') {
        while (cells.length > 0 && String(cells.at(-1)).trim() === '') cells.pop();
        // An empty row is kept here with its number, so that a row without one is counted on.
        rows.push({ line, cells });
      }
    },
  });
  return rows;
};

/**
 * The rows of a sheet with their numbers, empty ones left out. Numbers, booleans and texts as they are; dates and times
 * by the cell's format as ISO text; a formula gives its kept result; an error its text. A row has at least as many cells
 * as the widest of the first hundred.
 *
 * Source: ECMA-376-1, section 18.3 (worksheets).
 */
export async function* sheetRows(
  blob: Blob,
  sheet: Sheet,
  workbook: Workbook,
  options: ReadOptions = {},
): AsyncGenerator<readonly RawRow[]> {
  const padded = (row: RawRow, width: number): RawRow =>
    row.cells.length >= width
      ? row
      : { ...row, cells: [...row.cells, ...Array<string>(width - row.cells.length).fill('')] };
  let held: RawRow[] | null = [];
  let [line, width] = [0, 0];
  const release = (rows: readonly RawRow[]): readonly RawRow[] => {
    held = null;
    width = Math.max(0, ...rows.slice(0, PADDED).map(({ cells }) => cells.length));
    return rows.map((row) => padded(row, width));
  };
  for await (const xml of rowTexts(blob, sheet, options)) {
    const all = rowsIn(xml, workbook, line);
    line = all.at(-1)?.line ?? line;
    const rows = all.filter(({ cells }) => cells.length > 0);
    if (held === null) yield rows.map((row) => padded(row, width));
    else {
      held.push(...rows);
      if (held.length >= PADDED) yield release(held);
    }
  }
  if (held !== null) yield release(held);
}
