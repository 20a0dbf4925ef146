import type { RawCell } from '../formats/raw-table';
import { cellText } from './cell-reader';
import { guessColumn } from './guess-column';
import type { Mapping } from './mapping';
import { lookupWord } from './plain-text';
import { readDate } from './read-date';

/** What a line below the header is where it is no row of data. */
export type LineKind = 'heading_again' | 'other_heading' | 'text_line';

/** Fewer filled cells than this are no heading. */
const FEWEST = 3;
/** The share of a heading's cells that has to be known. */
const KNOWN = 0.6;

const hasDigit = (cell: RawCell): boolean => {
  if (typeof cell !== 'string') return true;
  for (let index = 0; index < cell.length; index += 1) {
    const code = cell.charCodeAt(index);
    if (code >= 48 && code <= 57) return true;
  }
  return false;
};

const filledPlaces = (cells: readonly RawCell[]): readonly number[] =>
  cells.flatMap((cell, place) => (cellText(cell).trim() === '' ? [] : [place]));

/** Whether a line repeats the header, or one of the lines that it was put together from. */
const repeats = (cells: readonly RawCell[], filled: readonly number[], header: readonly string[]): boolean =>
  filled.every((place) => (header[place] ?? '').includes(lookupWord(cellText(cells[place] ?? ''))));

/** Whether a line names columns: those of the header in another order, or mostly known ones. */
const namesColumns = (cells: readonly RawCell[], filled: readonly number[], names: ReadonlySet<string>): boolean => {
  const texts = filled.map((place) => cellText(cells[place] ?? ''));
  const known = texts.filter((text) => names.has(lookupWord(text)) || guessColumn(text) !== undefined);
  return known.length >= Math.max(FEWEST, KNOWN * texts.length);
};

/** A line that begins with a mark of comments and does not fit the header, nor has a date where visits have theirs. */
const isComment = (cells: readonly RawCell[], width: number, date: number | undefined): boolean => {
  if (cells.length === width || !/^\s*(#|\/\/)/.test(cellText(cells[0] ?? ''))) return false;
  const dated = date === undefined || date === 0 ? '' : cellText(cells[date] ?? '').trim();
  return (['ymd', 'dmy', 'mdy'] as const).every((order) => readDate(dated, order) === undefined);
};

/**
 * Tells lines that are no data from rows, in the file's order: a heading that comes again (exports put one behind the
 * other), everything below a heading that is another one, and a line of one text (a comment, the end of a report).
 */
export const lineKinds = (mapping: Mapping): ((cells: readonly RawCell[]) => LineKind | undefined) => {
  const header = mapping.header.map(lookupWord);
  const names = new Set(header.filter((name) => name !== ''));
  const placeOf = (name: string): number | undefined => mapping.columns.find(({ to }) => to === name)?.from[0];
  const date = placeOf('visit_date');
  const client = placeOf('client_id');
  let isOther = false;

  const mayBeHeading = (cells: readonly RawCell[]): boolean => {
    const dated = date === undefined ? undefined : cells[date];
    if (dated !== undefined && hasDigit(dated)) return false;
    if (date !== undefined && dated !== undefined) return true;
    return names.has(lookupWord(cellText(cells[client ?? 0] ?? '')));
  };

  return (cells) => {
    if (isComment(cells, header.length, date)) return 'text_line';
    if (mayBeHeading(cells) || cells.length === 1) {
      const filled = filledPlaces(cells);
      if (filled.length === 1 && filled[0] === 0 && header.length > 2) return 'text_line';
      if (filled.length >= FEWEST && repeats(cells, filled, header)) {
        isOther = false;
        return 'heading_again';
      }
      if (filled.length >= FEWEST && namesColumns(cells, filled, names)) isOther = true;
    }
    return isOther ? 'other_heading' : undefined;
  };
};
