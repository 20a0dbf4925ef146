import type { RawCell } from '../formats/raw-table';
import type { Column } from './column';
import type { ColumnMapping } from './mapping';
import { isMissingWord } from './missing-words';
import { numberCell } from './number-cell';
import { lookupWord, plainText } from './plain-text';
import { readDate } from './read-date';
import { readTime, timeOfDayPart } from './read-time';
import { holdsMarks } from './holds-marks';
import { wordSynonyms } from './word-synonyms';

/** A source cell as the text of its canonical column; what cannot be read stays as it is written. */
export type CellReader = (cell: RawCell) => string;

const ISO_DAY = /^\d{4}-\d{2}-\d{2}$/;
const ISO_DAY_AND_TIME = /^\d{4}-\d{2}-\d{2}[T ]\d/;
/** So many different texts of a column are kept with what they became. */
const REMEMBERED = 1000;
const CLOCK = /^\d{2}:\d{2}$/;

/** The cell's own text: numbers of typed formats in their shortest form, true and false as words. */
export const cellText = (cell: RawCell): string => (typeof cell === 'string' ? cell : String(cell));

const clean = (cell: RawCell): string => {
  const text = cellText(cell);
  return holdsMarks(text) ? plainText(text) : text.trim();
};

const canonicalWords = (column: Column): ReadonlyMap<string, string> =>
  new Map((column.type === 'flag' ? ['y', 'n'] : (column.choices ?? [])).map((word) => [word.toLowerCase(), word]));

/** Digits with at most one point, a digit at both ends: most cells are such, and a loop tells it fastest. */
const isPlainDecimal = (text: string): boolean => {
  let points = 0;
  for (let index = 0; index < text.length; index += 1) {
    const code = text.charCodeAt(index);
    if (code >= 48 && code <= 57) continue;
    if (code !== 46 || points > 0 || index === 0 || index === text.length - 1) return false;
    points += 1;
  }
  return text !== '';
};

const dateReader = ({ dateOrder }: ColumnMapping): CellReader => {
  return (cell) => {
    if (typeof cell === 'string' && ISO_DAY.test(cell)) return cell;
    const text = clean(cell);
    if (ISO_DAY.test(text) || (dateOrder === undefined && !ISO_DAY_AND_TIME.test(text))) return text;
    return readDate(text, dateOrder ?? 'ymd')?.date ?? text;
  };
};

const timeReader = ({ dateOrder = 'ymd' }: ColumnMapping): CellReader => {
  const isSerial = dateOrder.startsWith('serial');
  return (cell) => {
    if (typeof cell === 'string' && CLOCK.test(cell)) return cell;
    if (typeof cell === 'number' && (cell < 1 || isSerial)) return timeOfDayPart(cell % 1) ?? String(cell);
    const text = clean(cell);
    if (CLOCK.test(text)) return text;
    return readTime(text) ?? readDate(text, dateOrder)?.time ?? text;
  };
};

const numberReader = (column: Column, mapping: ColumnMapping): CellReader => {
  const read = numberCell(column, mapping);
  const asIs = mapping.unit === undefined || mapping.unit === column.unit;
  const pointAsIs = asIs && mapping.decimal !== ',';
  const typed = numberCell(column, { ...mapping, decimal: '.' });
  return (cell) => {
    if (cell === '') return '';
    if (typeof cell === 'number') return asIs ? String(cell) : typed(String(cell));
    if (pointAsIs && typeof cell === 'string' && isPlainDecimal(cell)) return cell;
    const text = clean(cell);
    return text === '' ? '' : read(text);
  };
};

const wordReader = (column: Column, { words }: ColumnMapping): CellReader => {
  const canonical = canonicalWords(column);
  const own = new Map(Object.entries(words ?? {}));
  const flags = column.type === 'flag';
  return (cell) => {
    if (typeof cell === 'boolean' && flags && !own.has(String(cell))) return cell ? 'y' : 'n';
    const text = clean(cell);
    const word = lookupWord(text);
    return own.get(word) ?? canonical.get(word) ?? text;
  };
};

/** A reader that looks at equal texts once. */
const remembering = (read: CellReader): CellReader => {
  const known = new Map<RawCell, string>();
  return (cell) => {
    const before = known.get(cell);
    if (before !== undefined) return before;
    const text = read(cell);
    if (known.size < REMEMBERED) known.set(cell, text);
    return text;
  };
};

const plainReader = (column: Column, mapping: ColumnMapping): CellReader => {
  switch (column.type) {
    case 'date':
      return dateReader(mapping);
    case 'time':
      return timeReader(mapping);
    case 'number':
      return numberReader(column, mapping);
    case 'integer':
      return remembering((cell) => clean(cell).replace(/^(\d+)[.,]0+$/, '$1'));
    case 'flag':
    case 'choice':
      return remembering(wordReader(column, mapping));
    case 'text':
      if (column.name !== 'client_id') return mapping.words === undefined ? cellText : wordReader(column, mapping);
      return (cell) => {
        const text = cellText(cell);
        return holdsMarks(text) ? clean(text).replaceAll('\u0000', '') : text;
      };
  }
};

const DIGIT = /^\s*\d/;

/** A reader to which some words of the mapping say nothing. */
const withoutSilenced = (read: CellReader, { words }: ColumnMapping): CellReader => {
  const silenced = new Set(Object.entries(words ?? {}).flatMap(([word, to]) => (to === '' ? [word] : [])));
  if (silenced.size === 0) return read;
  const mayBeFigure = [...silenced].some((word) => DIGIT.test(word));
  return (cell) => {
    const text = cellText(cell);
    if (!mayBeFigure && DIGIT.test(text)) return read(cell);
    return silenced.has(lookupWord(text)) ? '' : read(cell);
  };
};

/** Reads the cells of one source column into one canonical column. */
export const cellReader = (column: Column, mapping: ColumnMapping): CellReader => {
  const isWorded = column.type === 'flag' || column.type === 'choice';
  const read = plainReader(column, mapping);
  return isWorded ? read : withoutSilenced(read, mapping);
};

/** Words (lower case) that a person made unknown although they say something: told row by row; others are counted. */
export const wordsMadeUnknown = (column: Column, { words }: ColumnMapping): ReadonlySet<string> => {
  const plain = wordSynonyms(column);
  return new Set(
    Object.entries(words ?? {})
      .filter(([word, to]) => to === '' && plain.get(word) !== '' && !isMissingWord(word))
      .map(([word]) => word),
  );
};
