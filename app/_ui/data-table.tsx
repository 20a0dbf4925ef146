'use client';

import { useId, useMemo, useRef, useState, type KeyboardEvent, type MouseEvent } from 'react';
import { tableFile, type TableFact } from '../../lib/workspace/table-file';
import { useFormatters, useMessages } from '../_state/language-provider';
import { useSession } from '../_state/workspace-provider';
import type { DataColumn } from './data-column';
import { DataTableHead } from './data-table-head';
import { DataTableRow } from './data-table-row';
import styles from './data-table.module.css';
import { foundRows, wantedOf } from './found-rows';
import { SearchField } from './search-field';
import { Empty } from './states';
import { useOpenPath } from './use-open-path';
import { useRowWindow } from './use-row-window';
import { useSaveFile } from './use-save-file';
import { useSortedRows, type InitialSort } from './use-sorted-rows';

export interface DataTableProps<Row> {
  /** What the rows are; read out, and shown above the table. */
  readonly caption: string;
  readonly rows: readonly Row[];
  /** Keep the array stable between renders. */
  readonly columns: readonly DataColumn<Row>[];
  readonly rowKey: (row: Row) => string;
  /** Where Enter or a click on a row leads; the first column becomes a link. */
  readonly href?: (row: Row) => string;
  /** What the table is, kebab-case, for its file. */
  readonly fileName: string;
  /** What its file says of every row, where the screen says it beside the table. */
  readonly facts?: readonly TableFact[];
  /** Word for several rows: *clients*, *pairs*. */
  readonly rowsWord?: string;
  readonly initialSort?: InitialSort;
  /** A search over all columns stands above the table. */
  readonly searchLabel?: string;
  /** Marks rows, for example those of a point that has the focus. */
  readonly isMarked?: (row: Row) => boolean;
  readonly captionHidden?: boolean;
}

const moves: Readonly<Record<string, (index: number, last: number) => number>> = {
  ArrowDown: (index, last) => Math.min(index + 1, last),
  ArrowUp: (index) => Math.max(index - 1, 0),
  PageDown: (index, last) => Math.min(index + 15, last),
  PageUp: (index) => Math.max(index - 15, 0),
  Home: () => 0,
  End: (_, last) => last,
};

const indexOf = (target: EventTarget | null): number | undefined => {
  const row = target instanceof Element ? target.closest<HTMLElement>('tr[data-index]') : null;
  return row === null ? undefined : Number(row.dataset.index);
};

/** A table that sorts, searches, draws only rows in view when it is long, moves by keys, and can be taken away. */
export const DataTable = <Row,>(props: DataTableProps<Row>) => {
  const { caption, rows, columns, rowKey, href, fileName, facts, initialSort, searchLabel, isMarked, captionHidden } =
    props;
  const messages = useMessages();
  const formatters = useFormatters();
  const { dataVersion } = useSession();
  const { saveFile } = useSaveFile();
  const openPath = useOpenPath();
  const captionId = useId();
  const [search, setSearch] = useState('');
  const [active, setActive] = useState(0);
  const table = useRef<HTMLTableElement>(null);

  const wanted = useMemo(() => wantedOf(search, formatters.locale), [search, formatters.locale]);
  const found = useMemo(() => foundRows(rows, columns, wanted), [rows, columns, wanted]);
  const { sorted, directionOf, toggle } = useSortedRows(found, columns, initialSort);
  const { setScroller, long, printing, drawn, before, after, reveal, measure } = useRowWindow(sorted.length);
  const last = sorted.length - 1;
  const present = Math.min(active, Math.max(last, 0));

  const focusRow = (index: number): void => {
    setActive(index);
    reveal(index);
    // The row is drawn after the scroll; two frames later it is there to take the focus.
    requestAnimationFrame(() =>
      requestAnimationFrame(() => table.current?.querySelector<HTMLElement>(`tr[data-index="${index}"]`)?.focus()),
    );
  };
  const open = (index: number): void => {
    const row = sorted[index];
    if (row !== undefined && href !== undefined) openPath(href(row));
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    const index = indexOf(event.target);
    if (index === undefined || (event.target as Element).closest('a, button') !== null) return;
    const move = moves[event.key];
    if (move !== undefined) {
      event.preventDefault();
      focusRow(move(index, last));
    } else if (event.key === 'Enter') open(index);
  };
  const onClick = (event: MouseEvent): void => {
    const index = indexOf(event.target);
    if (index === undefined) return;
    setActive(index);
    const selecting = window.getSelection()?.isCollapsed === false;
    if (!selecting && (event.target as Element).closest('a, button') === null) open(index);
  };
  const save = (): void => {
    const cells = sorted.map((row) => columns.map((column) => (column.saved ?? column.value)(row)));
    saveFile('table', tableFile(fileName, dataVersion, columns, cells, facts), cells.length);
  };

  return (
    <section className={styles.block} aria-labelledby={captionId}>
      <div className={styles.tools}>
        <p id={captionId} className={captionHidden === true ? 'visually-hidden' : styles.caption}>
          {caption}
        </p>
        {searchLabel === undefined ? null : <SearchField label={searchLabel} value={search} onChange={setSearch} />}
        <span className={styles.count} role="status">
          {messages.table.shown({
            shown: sorted.length,
            all: rows.length,
            rows: props.rowsWord ?? messages.table.rows,
          })}
        </span>
        <button type="button" className="button" onClick={save}>
          {messages.common.saveTable}
        </button>
      </div>
      {sorted.length === 0 ? (
        <Empty title={rows.length === 0 ? messages.table.nothing : messages.table.none}>
          {rows.length === 0 ? messages.table.nothingRemedy : messages.table.noneRemedy}
        </Empty>
      ) : (
        <div ref={setScroller} className={long ? styles.scrollLong : styles.scroll}>
          <table
            ref={table}
            role="grid"
            className={[styles.table, long ? styles.fixed : '', href === undefined ? '' : styles.opens].join(' ')}
            aria-labelledby={captionId}
            aria-rowcount={sorted.length + 1}
            onKeyDown={onKeyDown}
            onClick={onClick}
          >
            <DataTableHead columns={columns} directionOf={directionOf} onSort={toggle} />
            <tbody>
              {before > 0 ? (
                <tr className={styles.spacer} aria-hidden="true">
                  <td style={{ height: before }} />
                </tr>
              ) : null}
              {drawn.map((index) => {
                const row = sorted[index];
                if (row === undefined) return null;
                return (
                  <DataTableRow
                    key={rowKey(row)}
                    row={row}
                    index={index}
                    columns={columns}
                    wanted={wanted}
                    href={href?.(row)}
                    active={index === present}
                    marked={isMarked?.(row) === true}
                    measure={long ? measure : undefined}
                  />
                );
              })}
              {after > 0 ? (
                <tr className={styles.spacer} aria-hidden="true">
                  <td style={{ height: after }} />
                </tr>
              ) : null}
            </tbody>
          </table>
        </div>
      )}
      {printing && drawn.length < sorted.length ? (
        <p className="print-only">{messages.table.printedPart({ printed: drawn.length, all: sorted.length })}</p>
      ) : null}
    </section>
  );
};
