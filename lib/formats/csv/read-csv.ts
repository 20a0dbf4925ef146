import Papa from 'papaparse';

/** One record of a delimited text file, with the line on which it begins (1 = first line). */
export interface CsvRecord {
  readonly line: number;
  readonly fields: readonly string[];
}

export interface CsvTable {
  readonly delimiter: string;
  readonly records: readonly CsvRecord[];
  /** Lines at which a quoted field was never closed. */
  readonly brokenQuotes: readonly number[];
}

const DELIMITERS = [',', ';', '\t', '|'];

const newlines = (text: string, from: number, to: number): number => {
  let count = 0;
  for (let index = from; index < to; index += 1) if (text.charCodeAt(index) === 10) count += 1;
  return count;
};

/** The separator that cuts the header into most fields. */
const delimiterOf = (text: string): string => {
  const header = /\S[^\n]*/.exec(text)?.[0] ?? '';
  let best = ',';
  let most = 0;
  for (const candidate of DELIMITERS) {
    const parts = header.split(candidate).length;
    if (parts > most) [best, most] = [candidate, parts];
  }
  return best;
};

/** How far reading again after broken quotes may go: a file full of them must not take the square of its length. */
const rereadBudget = (text: string): number => 8 * text.length + 10_000_000;

/**
 * Cuts RFC 4180 text into records; lines that hold nothing are left out. Quoted fields may span lines; line ends may be
 * mixed. A record whose quotes are broken ends with its first line, so that it takes no other record with it.
 */
export const readCsv = (raw: string): CsvTable => {
  const text = raw.replace(/\r\n?/g, '\n');
  const delimiter = delimiterOf(text);
  const records: CsvRecord[] = [];
  const brokenQuotes: number[] = [];
  let [cursor, line, reread] = [0, 1, 0];
  const lineEnd = (from: number): number => {
    const end = text.indexOf('\n', from);
    return end < 0 ? text.length : end + 1;
  };
  const readFrom = (base: number): void => {
    Papa.parse<string[]>(text.slice(base), {
      delimiter,
      newline: '\n',
      skipEmptyLines: false,
      step: ({ data, errors, meta }, parser) => {
        const start = cursor;
        cursor = base + meta.cursor;
        if (!errors.some((error) => error.type === 'Quotes')) {
          if (data.some((field) => field.trim() !== '')) records.push({ line, fields: data });
          line += newlines(text, start, cursor);
          return;
        }
        const end = lineEnd(start);
        reread += cursor - start;
        records.push({ line, fields: text.slice(start, end).trimEnd().split(delimiter) });
        brokenQuotes.push(line);
        if (reread < rereadBudget(text)) cursor = end;
        line += newlines(text, start, cursor);
        parser.abort();
      },
    });
  };
  do readFrom(cursor);
  while (cursor < text.length);
  return { delimiter, records, brokenQuotes };
};
