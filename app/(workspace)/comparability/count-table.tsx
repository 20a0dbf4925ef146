'use client';

import styles from './comparability-screen.module.css';

// What scrolls has to be reached by keyboard (WCAG 2.1.1).
const FOCUSABLE = { tabIndex: 0 } as const;

interface CountTableProps {
  readonly caption: string;
  readonly columns: readonly string[];
  /** The first cell names the row. */
  readonly rows: readonly (readonly string[])[];
}

/** Counts by row in an order that is given: nobody sorts them. */
export const CountTable = ({ caption, columns, rows }: CountTableProps) => (
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
        {rows.map(([name, ...cells], row) => (
          <tr key={row}>
            <th scope="row">
              <bdi>{name}</bdi>
            </th>
            {cells.map((cell, place) => (
              <td key={place}>{cell}</td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  </div>
);
