import type { RawRow } from '../raw-table';

/** Characters after which a record without an end is cut: no table takes a longer one. */
const LONGEST_RECORD = 2_000_000;

/** How far reading again after broken quotes may go: a file full of them must not take the square of its length. */
const rereadBudget = (read: number): number => 8 * read + 10_000_000;

/** Text in pieces, cut into records. */
export interface RecordCutter {
  /** The records that are complete with this piece; with the last one, all that is left. */
  push(piece: string, last: boolean): Generator<RawRow>;
}

interface Quoted {
  readonly cells: readonly string[];
  readonly end: number;
}

const isBlank = (cells: readonly string[]): boolean => cells.every((cell) => cell.trim() === '');

/**
 * One record that holds a quote. `more`: it may go on in the next piece. A number: its quotes are out of order, seen at
 * that place.
 */
const quotedRecord = (text: string, start: number, delimiter: string, last: boolean): Quoted | 'more' | number => {
  const cells: string[] = [];
  const length = text.length;
  const limit = Math.min(length, start + LONGEST_RECORD);
  const unfinished = length - start > LONGEST_RECORD ? length : 'more';
  let [at, end] = [start, -1];
  for (;;) {
    if (text[at] !== '"') {
      if (end < at) end = text.indexOf('\n', at);
      if (end < 0 && !last) return unfinished;
      if (end < 0) end = length;
      const next = text.slice(at, end).indexOf(delimiter);
      if (next < 0) {
        cells.push(text.slice(at, end));
        return { cells, end: end + 1 };
      }
      cells.push(text.slice(at, at + next));
      at += next + 1;
      continue;
    }
    let close = at + 1;
    for (;;) {
      close = text.indexOf('"', close);
      if (close < 0 || close >= limit) return limit < length || last ? limit : 'more';
      if (close + 1 === length && !last) return 'more';
      if (text[close + 1] !== '"') break;
      close += 2;
    }
    cells.push(text.slice(at + 1, close).replaceAll('""', '"'));
    let after = close + 1;
    while (text[after] === ' ' || (text[after] === '\t' && delimiter !== '\t')) after += 1;
    if (after >= length) return last ? { cells, end: length } : unfinished;
    if (text[after] === '\n') return { cells, end: after + 1 };
    if (text[after] !== delimiter) return after;
    at = after + 1;
  }
};

const newlines = (text: string, from: number, to: number): number => {
  let count = 0;
  for (let at = text.indexOf('\n', from); at >= 0 && at < to; at = text.indexOf('\n', at + 1)) count += 1;
  return count;
};

/**
 * Cuts RFC 4180 text that comes in pieces into records; lines that hold nothing are left out, but counted. Quoted fields
 * may span lines; line ends may be mixed. A record whose quotes are broken ends with its first line, so that it takes
 * no other record with it; one of more than two million characters is cut there. No more is kept than one record.
 */
export const recordCutter = (delimiter: string, firstLine = 1): RecordCutter => {
  let text = '';
  let [line, read, reread] = [firstLine, 0, 0];
  let heldReturn = false;
  let skipping = false;

  const take = (piece: string, last: boolean): void => {
    const whole = heldReturn ? `\r${piece}` : piece;
    heldReturn = !last && whole.endsWith('\r');
    const held = heldReturn ? whole.slice(0, -1) : whole;
    text += held.includes('\r') ? held.replace(/\r\n?/g, '\n') : held;
    read += piece.length;
  };

  function* push(piece: string, last: boolean): Generator<RawRow> {
    take(piece, last);
    let at = 0;
    let quote = text.indexOf('"');
    while (at < text.length) {
      const newline = text.indexOf('\n', at);
      const lineEnd = newline < 0 ? text.length : newline;
      if (skipping) {
        skipping = newline < 0;
        if (newline >= 0) line += 1;
        at = lineEnd + 1;
        continue;
      }
      if (quote >= 0 && quote < at) quote = text.indexOf('"', at);
      if (quote < 0 || quote > lineEnd || lineEnd - at > LONGEST_RECORD) {
        if (newline < 0 && !last && text.length - at <= LONGEST_RECORD) break;
        const cells = text.slice(at, Math.min(lineEnd, at + LONGEST_RECORD)).split(delimiter);
        if (!isBlank(cells)) yield { line, cells };
        skipping = newline < 0;
        if (newline >= 0) line += 1;
        at = lineEnd + 1;
        continue;
      }
      const record = quotedRecord(text, at, delimiter, last);
      if (record === 'more') break;
      if (typeof record !== 'number') {
        if (!isBlank(record.cells)) yield { line, cells: record.cells };
        line += newlines(text, at, record.end);
        at = record.end;
        continue;
      }
      if (newline < 0 && !last) {
        if (text.length - at <= LONGEST_RECORD) break;
        skipping = true;
      }
      yield { line, cells: text.slice(at, lineEnd).trimEnd().split(delimiter), trouble: 'broken_quote' };
      reread += Math.max(0, record - lineEnd);
      const goesOn = reread < rereadBudget(read) ? lineEnd : text.indexOf('\n', record);
      if (goesOn < 0) skipping = !last;
      const end = goesOn < 0 ? text.length : goesOn + 1;
      line += newlines(text, at, end);
      at = end;
    }
    text = text.slice(Math.min(at, text.length));
  }
  return { push };
};
