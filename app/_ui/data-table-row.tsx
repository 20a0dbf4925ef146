'use client';

import { useFormatters, useMessages } from '../_state/language-provider';
import { formatCell, isNumeric, type DataColumn } from './data-column';
import styles from './data-table.module.css';
import { FilterLink } from './filter-link';
import { foundBy, type Wanted } from './found-rows';

interface DataTableRowProps<Row> {
  readonly row: Row;
  /** Place in the sorted rows, from 0. */
  readonly index: number;
  readonly columns: readonly DataColumn<Row>[];
  /** What was searched for. */
  readonly wanted: Wanted;
  readonly href: string | undefined;
  /** The one row that Tab reaches. */
  readonly active: boolean;
  readonly marked: boolean;
  readonly measure: ((element: HTMLTableRowElement | null) => void) | undefined;
}

/** One row; its first cell is a link where the row leads somewhere. */
export const DataTableRow = <Row,>({
  row,
  index,
  columns,
  wanted,
  href,
  active,
  marked,
  measure,
}: DataTableRowProps<Row>) => {
  const messages = useMessages();
  const formatters = useFormatters();
  return (
    <tr
      ref={measure}
      data-index={index}
      aria-rowindex={index + 2}
      tabIndex={active ? 0 : -1}
      className={marked ? styles.marked : undefined}
    >
      {columns.map((column, place) => {
        const content = column.cell?.(row) ?? <bdi>{formatCell(column, row, formatters, messages.table.empty)}</bdi>;
        return (
          <td
            key={column.id}
            className={[
              isNumeric(column) ? styles.end : '',
              column.kind === 'date' ? styles.date : '',
              column.printed === false ? 'no-print' : '',
            ].join(' ')}
          >
            {place === 0 && href !== undefined ? (
              <FilterLink href={href} tabIndex={-1}>
                {content}
              </FilterLink>
            ) : (
              content
            )}
            {foundBy(column, row, wanted).map((sentence) => (
              <span key={sentence} className={styles.found}>
                <bdi>{sentence}</bdi>
              </span>
            ))}
          </td>
        );
      })}
    </tr>
  );
};
