import type { RawRow } from '../formats/raw-table';
import { cellText } from './cell-reader';
import { guessColumn } from './guess-column';
import { numberInCell } from './number-in-cell';
import { readDate } from './read-date';

/** Cells of a row that are looked at: no table is read that is much wider. */
const LOOKED_AT = 1000;

const filledWidth = (row: RawRow): number =>
  row.cells.slice(0, LOOKED_AT).filter((cell) => cellText(cell).trim() !== '').length;

const score = (row: RawRow, widest: number): number => {
  const cells = row.cells
    .slice(0, LOOKED_AT)
    .map((cell) => cellText(cell).trim())
    .filter((cell) => cell !== '');
  if (cells.length === 0) return -1;
  const texts = cells.filter((cell) => numberInCell(cell) === undefined && readDate(cell, 'dmy') === undefined);
  const distinct = new Set(texts.map((text) => text.toLowerCase())).size;
  const known = cells.filter((cell) => guessColumn(cell) !== undefined).length;
  return known * 3 + (2 * distinct) / cells.length + (2 * Math.min(cells.length, widest)) / widest;
};

/**
 * The place of the header among a table's first rows: the row with most known headings, whose cells are texts, all
 * different, and as many as the table is wide; the first of equals.
 */
export const findHeader = (rows: readonly RawRow[]): number => {
  const widest = Math.max(1, ...rows.map(filledWidth));
  let [best, most] = [0, -1];
  rows.forEach((row, place) => {
    const points = score(row, widest);
    if (points > most) [best, most] = [place, points];
  });
  return best;
};
