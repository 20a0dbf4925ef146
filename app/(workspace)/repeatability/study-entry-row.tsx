'use client';

import type { KeyboardEvent } from 'react';
import type { StudyCell, StudyRow } from '../../../lib/workspace/study-file';
import { useMessages } from '../../_state/language-provider';
import styles from './study-entry.module.css';

const TEXT: ReadonlySet<StudyCell> = new Set(['client_id', 'operator', 'device_id']);

interface StudyEntryRowProps {
  readonly row: StudyRow;
  readonly index: number;
  readonly columns: readonly StudyCell[];
  readonly onCell: (column: StudyCell, text: string) => void;
  readonly onEnter: () => void;
  readonly onRemove: () => void;
}

/** One reading of the study as it is typed. */
export const StudyEntryRow = ({ row, index, columns, onCell, onEnter, onRemove }: StudyEntryRowProps) => {
  const words = useMessages().studyEntry;
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.key !== 'Enter' || event.nativeEvent.isComposing) return;
    event.preventDefault();
    onEnter();
  };
  return (
    <tr>
      {columns.map((column) => (
        <td key={column}>
          <input
            type={column === 'visit_date' ? 'date' : 'text'}
            inputMode={TEXT.has(column) || column === 'visit_date' ? undefined : 'decimal'}
            className={column === 'client_id' || column === 'device_id' ? styles.wide : undefined}
            aria-label={words.cell({ column: words.columns[column], row: index + 1 })}
            autoComplete="off"
            value={row[column] ?? ''}
            onChange={(event) => {
              onCell(column, event.target.value);
            }}
            onKeyDown={onKeyDown}
          />
        </td>
      ))}
      <td>
        <button type="button" className="button" aria-label={words.remove({ row: index + 1 })} onClick={onRemove}>
          {words.removeSign}
        </button>
      </td>
    </tr>
  );
};
