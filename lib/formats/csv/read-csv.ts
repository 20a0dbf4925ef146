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
  const header = /^[^\n]*/.exec(text)?.[0] ?? '';
  let best = ',';
  let most = 0;
  for (const candidate of DELIMITERS) {
    const parts = header.split(candidate).length;
    if (parts > most) [best, most] = [candidate, parts];
  }
  return best;
};

/** Cuts RFC 4180 text into records; lines that hold nothing are left out. Quoted fields may span lines; line ends may be mixed. */
export const readCsv = (raw: string): CsvTable => {
  const text = raw.replace(/\r\n?/g, '\n');
  const delimiter = delimiterOf(text);
  const records: CsvRecord[] = [];
  const brokenQuotes: number[] = [];
  let [cursor, line] = [0, 1];
  Papa.parse<string[]>(text, {
    delimiter,
    newline: '\n',
    skipEmptyLines: false,
    step: ({ data, errors, meta }) => {
      if (data.some((field) => field.trim() !== '')) records.push({ line, fields: data });
      if (errors.some((error) => error.type === 'Quotes')) brokenQuotes.push(line);
      line += newlines(text, cursor, meta.cursor);
      cursor = meta.cursor;
    },
  });
  return { delimiter, records, brokenQuotes };
};
