import type { RawRow } from '../formats/raw-table';
import { cellText } from './cell-reader';
import { guessColumn } from './guess-column';
import { isMissingWord } from './missing-words';
import { numberInCell } from './number-in-cell';
import { readDate } from './read-date';
import { MOST_COLUMNS } from './too-wide';
import { unitOfWord } from './unit-words';

/** The headings of a table and the place of the last line that they stand in. */
export interface Headings {
  readonly names: readonly string[];
  readonly last: number;
}

const FREQUENCY = /^\d+(?:[.,]\d+)?\s*k?hz$/i;
const PATTERN = /^[dmyjath][dmyjath./: -]*[dmyjath]$/i;

const texts = (row: RawRow | undefined): readonly string[] => (row?.cells ?? []).map((cell) => cellText(cell).trim());

const bare = (text: string): string => text.replace(/^[([{<]\s*|\s*[)\]}>]$/g, '');

const isUnit = (text: string): boolean => unitOfWord(bare(text)) !== undefined || FREQUENCY.test(bare(text));

/** Whether a line holds units alone: two or more, beside dashes and patterns of dates. */
const isUnitsLine = (cells: readonly string[]): boolean => {
  const filled = cells.filter((text) => text !== '' && !isMissingWord(text));
  const units = filled.filter(isUnit);
  return units.length >= 2 && filled.every((text) => isUnit(text) || PATTERN.test(bare(text)));
};

/** Whether a line holds words and no figure or date; a frequency is a word. */
const isWordLine = (cells: readonly string[]): boolean => {
  const filled = cells.filter((text) => text !== '');
  return (
    filled.length >= 2 &&
    filled.every((text) => isUnit(text) || (numberInCell(text) === undefined && readDate(text, 'dmy') === undefined))
  );
};

const hasDouble = (cells: readonly string[]): boolean => {
  const filled = cells.filter((text) => text !== '').map((text) => text.toLowerCase());
  return new Set(filled).size < filled.length;
};

/** The cells of a line, each empty one as the one before it: a heading over several columns is written once. */
const spread = (cells: readonly string[], width: number): readonly string[] => {
  let before = '';
  return Array.from({ length: width }, (_, place) => {
    before = cells[place] === undefined || cells[place] === '' ? before : cells[place];
    return before;
  });
};

const joinedName = (upper: string, group: string, lower: string): string => {
  if (lower === '' || isMissingWord(lower)) return upper;
  const above = upper === '' ? group : upper;
  if (above === '') return lower;
  return isUnit(lower) || PATTERN.test(bare(lower)) ? `${above} [${bare(lower)}]` : `${above} ${lower}`;
};

const joined = (upper: readonly string[], lower: readonly string[]): readonly string[] => {
  const width = Math.max(upper.length, lower.length);
  const groups = spread(upper, width);
  return Array.from({ length: width }, (_, place) =>
    joinedName(upper[place] ?? '', groups[place] ?? '', lower[place] ?? ''),
  );
};

const knownIn = (names: readonly string[]): number => names.filter((name) => guessColumn(name) !== undefined).length;

/**
 * Whether the upper line leaves open what the lower one says: it has gaps or names twice, which the two together have
 * not. A first row of data would make headings unknown that are known.
 */
const completes = (upper: readonly string[], lower: readonly string[], below: readonly string[]): boolean => {
  if (!isWordLine(upper) || !isWordLine(lower) || below.length === 0 || isWordLine(below)) return false;
  const isOpen = hasDouble(upper) || lower.some((text, place) => text !== '' && (upper[place] ?? '') === '');
  if (!isOpen) return false;
  const together = joined(upper, lower);
  return !hasDouble(together) && knownIn(together) >= knownIn(upper);
};

/**
 * The headings of a table whose best header line stands at a place: with the units of a line of units below it, or put
 * together from two lines (`Resistance` over `5 kHz`, `50 kHz`), else that line alone.
 */
export const joinHeadings = (rows: readonly RawRow[], place: number): Headings => {
  const [before, own, next, below] = [place - 1, place, place + 1, place + 2].map((at) => texts(rows[at])) as [
    readonly string[],
    readonly string[],
    readonly string[],
    readonly string[],
  ];
  if (own.length > MOST_COLUMNS || next.length > MOST_COLUMNS) return { names: own, last: place };
  if (isUnitsLine(next) || completes(own, next, below)) return { names: joined(own, next), last: place + 1 };
  if (isUnitsLine(own) && isWordLine(before)) return { names: joined(before, own), last: place };
  if (hasDouble(own) && completes(before, own, next)) return { names: joined(before, own), last: place };
  return { names: own, last: place };
};
