'use client';

import { useFormatters, useMessages } from '../_state/language-provider';
import { isNumeric, type DataColumn } from './data-column';
import styles from './data-table.module.css';

interface DataTableHeadProps<Row> {
  readonly columns: readonly DataColumn<Row>[];
  readonly directionOf: (id: string) => 'ascending' | 'descending' | 'none';
  readonly onSort: (id: string) => void;
}

const arrows = { ascending: '↑', descending: '↓', none: '' } as const;

/** Headers with units; each is a button that sorts. */
export const DataTableHead = <Row,>({ columns, directionOf, onSort }: DataTableHeadProps<Row>) => {
  const messages = useMessages();
  const formatters = useFormatters();
  return (
    <thead>
      <tr aria-rowindex={1}>
        {columns.map((column) => {
          const unit = column.unit === undefined ? '' : formatters.unit(column.unit);
          const direction = directionOf(column.id);
          return (
            <th
              key={column.id}
              scope="col"
              aria-sort={direction}
              className={[
                isNumeric(column) ? styles.end : '',
                styles[column.width ?? 'medium'],
                column.printed === false ? 'no-print' : '',
              ].join(' ')}
            >
              <button
                type="button"
                className={styles.sort}
                onClick={() => {
                  onSort(column.id);
                }}
              >
                {messages.table.headerWithUnit({ title: column.title, unit })}
                <span className={styles.arrow} aria-hidden="true">
                  {arrows[direction]}
                </span>
              </button>
            </th>
          );
        })}
      </tr>
    </thead>
  );
};
