import type { Ucum } from '../core/units';
import { writeCsv, type CsvCell } from '../formats/csv/write-csv';

/** A column of a table on its way into a file. */
export interface TableColumn {
  readonly title: string;
  /** Values of the column are in this unit, whatever a person reads on screen. */
  readonly unit?: Ucum;
}

/** The text of a table's file: SI values, UCUM units in square brackets behind the header, RFC 4180. */
export const tableCsv = (columns: readonly TableColumn[], rows: readonly (readonly CsvCell[])[]): string =>
  writeCsv(
    columns.map(({ title, unit }) => (unit === undefined || unit === '1' ? title : `${title} [${unit}]`)),
    rows,
  );
