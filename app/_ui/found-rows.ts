import type { DataColumn } from './data-column';

/** What was typed into a search: compared without regard to case, in the language of the screen. */
export interface Wanted {
  readonly text: string;
  readonly locale: string;
}

const holds = (value: string | number | null, { text, locale }: Wanted): boolean =>
  String(value ?? '')
    .toLocaleLowerCase(locale)
    .includes(text);

export const wantedOf = (search: string, locale: string): Wanted => ({
  text: search.trim().toLocaleLowerCase(locale),
  locale,
});

/** The rows in which any column holds what is wanted. */
export const foundRows = <Row>(
  rows: readonly Row[],
  columns: readonly DataColumn<Row>[],
  wanted: Wanted,
): readonly Row[] =>
  wanted.text === ''
    ? rows
    : rows.filter((row) =>
        columns.some(
          (column) =>
            holds(column.value(row), wanted) ||
            column.alsoFound?.(row).some(({ text }) => holds(text, wanted)) === true,
        ),
      );

/** Why a row was found where the cell does not show it; empty where it does. */
export const foundBy = <Row>(column: DataColumn<Row>, row: Row, wanted: Wanted): readonly string[] =>
  wanted.text === '' || column.alsoFound === undefined || holds(column.value(row), wanted)
    ? []
    : column.alsoFound(row).flatMap(({ text, sentence }) => (holds(text, wanted) ? [sentence] : []));
