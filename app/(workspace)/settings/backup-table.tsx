'use client';

import { useMemo } from 'react';
import type { BackupEntry } from '../../../lib/workspace/clinic-state';
import { useMessages } from '../../_state/language-provider';
import { useInstantWords } from '../../_state/use-instant-words';
import { useSession } from '../../_state/workspace-provider';
import type { DataColumn } from '../../_ui/data-column';
import { DataTable } from '../../_ui/data-table';
import styles from './settings-screen.module.css';

const HASH_SHOWN = 12;

/** The backups that were made from here. */
export const BackupTable = () => {
  const messages = useMessages();
  const words = messages.settingsKeeping.backups;
  const instant = useInstantWords();
  const { backups } = useSession();
  const columns = useMemo(
    (): readonly DataColumn<BackupEntry>[] => [
      {
        id: 'at',
        title: words.when,
        value: (row) => row.at,
        cell: (row) => <span className="no-wrap">{instant.at(row.at)}</span>,
      },
      { id: 'name', title: words.file, value: (row) => row.name, width: 'wide' },
      { id: 'sealed', title: words.isSealed, value: (row) => (row.sealed ? words.yes : words.no) },
      {
        id: 'bytes',
        title: words.bytes,
        kind: 'number',
        value: (row) => row.bytes,
        cell: (row) => messages.settings.size({ bytes: row.bytes }),
      },
      { id: 'rows', title: words.rows, kind: 'number', value: (row) => row.rows },
      { id: 'hash', title: words.hash, value: (row) => row.sha256.slice(0, HASH_SHOWN) },
      { id: 'initials', title: words.initials, value: (row) => row.initials || messages.settingsLog.unsigned },
    ],
    [words, instant, messages],
  );
  if (backups.length === 0) return null;
  return (
    <div className={styles.wide}>
      <DataTable
        caption={words.caption}
        rows={backups}
        columns={columns}
        rowKey={(row) => `${row.at} ${row.sha256}`}
        fileName="backups"
        rowsWord={words.word({ n: backups.length })}
        initialSort={{ column: 'at', descending: true }}
      />
    </div>
  );
};
