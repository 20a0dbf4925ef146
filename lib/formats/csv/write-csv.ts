/** A cell: text, a number in plain notation, or nothing. */
export type CsvCell = string | number | null;

const PLAIN_NUMBER = /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i;
const STARTS_A_FORMULA = /^[=+\-@\t\r]/;
const NEEDS_QUOTES = /[",\r\n]/;

/** A spreadsheet would run a cell that begins like a formula; an apostrophe in front keeps it text. */
export const neutralise = (text: string): string =>
  STARTS_A_FORMULA.test(text) && !PLAIN_NUMBER.test(text) ? `'${text}` : text;

const cellText = (cell: CsvCell): string => {
  if (cell === null) return '';
  if (typeof cell === 'number') return Number.isFinite(cell) ? String(cell) : '';
  const text = neutralise(cell);
  return NEEDS_QUOTES.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
};

/**
 * Comma-separated values after RFC 4180: CRLF line ends, quotes doubled, one header row. Numbers keep a decimal point
 * in every language; cells that begin with `=`, `+`, `-`, `@`, tab or carriage return are neutralised, plain numbers
 * excepted. A number that is not finite becomes an empty cell.
 *
 * Source: RFC 4180, section 2; OWASP, CSV injection.
 */
export const writeCsv = (header: readonly string[], rows: readonly (readonly CsvCell[])[]): string =>
  [header, ...rows].map((row) => `${row.map(cellText).join(',')}\r\n`).join('');
