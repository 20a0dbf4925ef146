'use client';

import type { FigureTable } from '../../lib/figures/figure-table';
import { tableFile, type TableFact } from '../../lib/workspace/table-file';
import { useMessages } from '../_state/language-provider';
import { useSession } from '../_state/workspace-provider';
import { useSaveFile } from './use-save-file';
import styles from './data-table.module.css';

interface FigureTableViewProps {
  readonly table: FigureTable;
  readonly labelledBy: string;
  readonly fileName: string;
  /** What its file says of every row. */
  readonly facts?: readonly TableFact[] | undefined;
}

/** The table behind a figure: its cells as they are read, without sorting. */
export const FigureTableView = ({ table, labelledBy, fileName, facts }: FigureTableViewProps) => {
  const messages = useMessages();
  const { dataVersion } = useSession();
  const { saveFile } = useSaveFile();
  return (
    <div className={styles.scroll}>
      <table className={styles.table} aria-labelledby={labelledBy}>
        <thead>
          <tr>
            {table.columns.map((column, index) => (
              <th key={index} scope="col" className={column.align === 'end' ? styles.end : undefined}>
                {column.title}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {table.rows.map((row, rowIndex) => (
            <tr key={rowIndex}>
              {row.map((cell, index) => (
                <td key={index} className={table.columns[index]?.align === 'end' ? styles.end : undefined}>
                  <bdi>{cell}</bdi>
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      <button
        type="button"
        className={`button ${styles.under ?? ''}`}
        onClick={() => {
          saveFile('table', tableFile(fileName, dataVersion, table.columns, table.rows, facts), table.rows.length);
        }}
      >
        {messages.common.saveTable}
      </button>
    </div>
  );
};
