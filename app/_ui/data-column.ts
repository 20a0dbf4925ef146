import type { ReactNode } from 'react';
import type { Formatters } from '../../lib/core/formatters';
import type { IsoDate } from '../../lib/core/iso-date';
import type { Ucum } from '../../lib/core/units';

/** A text that a search finds in a row, and the sentence that says so. */
export interface AlsoFound {
  readonly text: string;
  readonly sentence: string;
}

/** A column of a data table. */
export interface DataColumn<Row> {
  readonly id: string;
  /** Header without its unit. */
  readonly title: string;
  /** Unit of a numeric value: shown in the header as the person prefers it, in files as UCUM. */
  readonly unit?: Ucum;
  readonly kind?: 'text' | 'number' | 'change' | 'date';
  /** Decimals of a number. */
  readonly digits?: number;
  /** What is sorted, searched and saved; null where there is nothing. A date is `YYYY-MM-DD`. */
  readonly value: (row: Row) => string | number | null;
  /** What is saved in its place, where a file must not hold what the screen shows. */
  readonly saved?: (row: Row) => string | number | null;
  /** What a search finds although it does not stand in the cell; where it alone is found, its sentence stands below. */
  readonly alsoFound?: (row: Row) => readonly AlsoFound[];
  /** What is shown, where it is more than the formatted value. */
  readonly cell?: (row: Row) => ReactNode;
  /** Whether the column also stands on paper; it does where nothing is said. */
  readonly printed?: boolean;
  /** Room in a long table, whose columns keep their widths while rows come and go. */
  readonly width?: 'narrow' | 'medium' | 'wide';
}

/** Numbers stand right-aligned. */
export const isNumeric = <Row>(column: DataColumn<Row>): boolean =>
  column.kind === 'number' || column.kind === 'change';

/** A cell's value as it is read. */
export const formatCell = <Row>(column: DataColumn<Row>, row: Row, formatters: Formatters, empty: string): string => {
  const value = column.value(row);
  if (value === null || value === '') return empty;
  if (column.kind === 'date') return formatters.dateShort(value as IsoDate);
  if (typeof value === 'string') return value;
  const digits = column.digits ?? 0;
  if (column.kind === 'change') return formatters.change(value, column.unit ?? '1', digits);
  return formatters.value(value, column.unit ?? '1', digits);
};
