'use client';

import { useMemo } from 'react';
import type { Mapping } from '../../../lib/import/mapping';
import type { ReadTable } from '../../../lib/import/plan';
import { previewRows } from '../../../lib/workspace/preview-rows';
import { useMessages } from '../../_state/language-provider';
import { CellText } from './cell-text';
import styles from './mapping-step.module.css';
import { ScrollRegion } from './scroll-region';
import { shortenedNumber } from './shortened-number';

interface PreviewTableProps {
  readonly name: string;
  readonly table: ReadTable;
  readonly mapping: Mapping;
}

/** The first rows as the import would read them with the present answers. */
export const PreviewTable = ({ name, table, mapping }: PreviewTableProps) => {
  const words = useMessages().importScreen.mapping.preview;
  const { columns, rows } = useMemo(() => previewRows(table, mapping), [table, mapping]);
  if (rows.length === 0 || columns.length === 0) return <p className="quiet">{words.none}</p>;
  const several = rows.some(({ part }) => part > 0);
  return (
    <ScrollRegion label={words.label({ name })}>
      <table className={styles.raw}>
        <caption className="visually-hidden">{words.label({ name })}</caption>
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
          {rows.map(({ line, part, cells }) => (
            <tr key={`${String(line)} ${String(part)}`}>
              {columns.map((column, place) => (
                <td key={column}>
                  {cells[place] === undefined || cells[place] === '' ? null : (
                    <CellText value={shortenedNumber(cells[place])} />
                  )}
                  {several && place === 0 && part > 0 ? (
                    <span className={styles.kind}> {words.reading({ n: part })}</span>
                  ) : null}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </ScrollRegion>
  );
};
