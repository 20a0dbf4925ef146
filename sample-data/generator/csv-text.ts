import { COLUMNS, type VisitRow } from './visit-row';

const cell = (text: string): string => (/[",\n\r]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);

/** Rows as CSV (RFC 4180 quoting), with a header and LF at every line end. */
export const csvText = (rows: readonly VisitRow[]): string =>
  [COLUMNS.join(','), ...rows.map((row) => COLUMNS.map((column) => cell(row[column])).join(','))].join('\n') + '\n';
