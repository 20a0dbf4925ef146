'use client';

import styles from './methods-screen.module.css';

// What scrolls has to be reached by keyboard (WCAG 2.1.1).
const FOCUSABLE = { tabIndex: 0 } as const;

interface PlainTableProps {
  readonly caption: string;
  readonly columns: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** A few cells of text that nobody sorts. */
export const PlainTable = ({ caption, columns, rows }: PlainTableProps) => (
  <div className={styles.scroll} role="region" aria-label={caption} {...FOCUSABLE}>
    <table className={styles.table}>
      <caption>{caption}</caption>
      <thead>
        <tr>
          {columns.map((column) => (
            <th key={column} scope="col">
              {column}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map((cells, row) => (
          <tr key={row}>
            {cells.map((cell, place) => (
              <td key={place}>{cell}</td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  </div>
);
