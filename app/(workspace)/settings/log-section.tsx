'use client';

import { useMemo } from 'react';
import type { LogEntry } from '../../../lib/workspace/clinic-state';
import { useMessages } from '../../_state/language-provider';
import { useInstantWords } from '../../_state/use-instant-words';
import { useLogDetails } from '../../_state/use-log-words';
import { useUndo } from '../../_state/use-undo';
import { useSession } from '../../_state/workspace-provider';
import type { DataColumn } from '../../_ui/data-column';
import { DataTable } from '../../_ui/data-table';
import { printOnly } from './print-only';
import { SettingsSection } from './settings-section';

/** What was done, when and by whom, with the way back and forth. */
export const LogSection = () => {
  const words = useMessages().settingsLog;
  const instant = useInstantWords();
  const details = useLogDetails();
  const { log } = useSession();
  const { undoes, redoes, undo, redo } = useUndo();
  const columns = useMemo(
    (): readonly DataColumn<LogEntry>[] => [
      {
        id: 'at',
        title: words.when,
        value: (row) => row.at,
        cell: (row) => <span className="no-wrap">{instant.at(row.at)}</span>,
      },
      { id: 'what', title: words.what, value: (row) => words.done[row.code] },
      { id: 'details', title: words.details, value: details, width: 'wide' },
      { id: 'initials', title: words.initials, value: (row) => row.initials || words.unsigned, width: 'narrow' },
    ],
    [words, instant, details],
  );
  return (
    <SettingsSection id="log" lead={words.lead}>
      <div className="row no-print">
        <button type="button" className="button" disabled={undoes === undefined} onClick={undo}>
          <bdi>{undoes === undefined ? words.nothingToUndo : words.undoNamed({ what: undoes })}</bdi>
        </button>
        <button type="button" className="button" disabled={redoes === undefined} onClick={redo}>
          <bdi>{redoes === undefined ? words.nothingToRedo : words.redoNamed({ what: redoes })}</bdi>
        </button>
        <button
          type="button"
          className="button"
          onClick={() => {
            printOnly('log');
          }}
        >
          {words.print}
        </button>
      </div>
      <DataTable
        caption={words.caption}
        rows={log}
        columns={columns}
        rowKey={(row) => `${row.at} ${row.code} ${JSON.stringify(row.details)}`}
        fileName="log"
        rowsWord={words.word({ n: log.length })}
        initialSort={{ column: 'at', descending: true }}
      />
    </SettingsSection>
  );
};
