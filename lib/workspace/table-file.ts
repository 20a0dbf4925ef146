import type { TableColumn } from '../export/table-csv';
import { tableCsv } from '../export/table-csv';

export type { TableColumn };

/** What is true of every row of a table and stands beside it on screen: its file says it in a column of its own. */
export interface TableFact {
  readonly title: string;
  readonly value: string | number;
}

/** A file ready to be handed to a person. */
export interface MadeFile {
  readonly name: string;
  readonly mediaType: string;
  readonly text: string;
}

/**
 * A table on screen as a CSV file, with a byte order mark so that spreadsheets read it as UTF-8.
 *
 * @param name what the table is, kebab-case, without an identity
 * @param dataVersion the session's, so that a file can be traced to its data
 */
export const tableFile = (
  name: string,
  dataVersion: string,
  columns: readonly TableColumn[],
  rows: readonly (readonly (string | number | null)[])[],
  facts: readonly TableFact[] = [],
): MadeFile => ({
  name: `driftline-${name}-${dataVersion}.csv`,
  mediaType: 'text/csv;charset=utf-8',
  text: `\uFEFF${tableCsv(
    [...columns, ...facts.map(({ title }) => ({ title }))],
    rows.map((row) => [...row, ...facts.map(({ value }) => value)]),
  )}`,
});
