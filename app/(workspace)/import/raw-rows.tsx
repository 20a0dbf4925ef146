'use client';

import type { ReadTable } from '../../../lib/import/plan';
import { useMessages } from '../../_state/language-provider';
import { CellText } from './cell-text';
import screen from './import-screen.module.css';
import styles from './mapping-step.module.css';
import { ScrollRegion } from './scroll-region';

interface RawRowsProps {
  readonly name: string;
  readonly table: ReadTable;
}

const SHOWN_AFTER_HEADER = 4;

/** The first rows as the file holds them: what stands before the header is quiet, and says so in words. */
export const RawRows = ({ name, table }: RawRowsProps) => {
  const words = useMessages().importScreen.mapping.raw;
  const { headerLine } = table.profile;
  const rows = table.firstRows
    .filter((row) => row.line <= headerLine)
    .concat(table.firstRows.filter((row) => row.line > headerLine).slice(0, SHOWN_AFTER_HEADER));
  const width = Math.max(0, ...rows.map(({ cells }) => cells.length));
  return (
    <ScrollRegion label={words.label({ name })}>
      <table className={styles.raw}>
        <caption className="visually-hidden">{words.label({ name })}</caption>
        <thead>
          <tr>
            <th scope="col">{words.line}</th>
            <th scope="col" colSpan={Math.max(1, width)}>
              {words.note({ n: rows.length })}
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => {
            const kind = row.line < headerLine ? 'preamble' : row.line === headerLine ? 'header' : 'row';
            return (
              <tr key={row.line} className={`${styles[kind] ?? ''} ${screen.inline ?? ''}`}>
                <th scope="row">
                  {row.line}
                  {kind === 'row' ? null : <span className={styles.kind}> {words.kind[kind]}</span>}
                </th>
                {Array.from({ length: Math.max(1, width) }, (_, place) => (
                  <td key={place}>
                    {row.cells[place] === undefined || row.cells[place] === '' ? null : (
                      <CellText value={String(row.cells[place])} />
                    )}
                  </td>
                ))}
              </tr>
            );
          })}
        </tbody>
      </table>
    </ScrollRegion>
  );
};
