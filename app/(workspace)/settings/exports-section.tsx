'use client';

import { useMemo } from 'react';
import { ok } from '../../../lib/core/result';
import type { ExportEntry } from '../../../lib/workspace/clinic-state';
import { useMessages } from '../../_state/language-provider';
import { useActing } from '../../_state/use-acting';
import { useInstantWords } from '../../_state/use-instant-words';
import { useSession } from '../../_state/workspace-provider';
import { ActNote } from '../../_ui/act-note';
import type { DataColumn } from '../../_ui/data-column';
import { DataTable } from '../../_ui/data-table';
import { useSaveFile } from '../../_ui/use-save-file';
import { SettingsSection } from './settings-section';

const HASH_SHOWN = 12;

/** The files that left the clinic through this app. */
export const ExportsSection = () => {
  const { settings, settingsLog } = useMessages();
  const words = settings.exports;
  const instant = useInstantWords();
  const { exports, cohort } = useSession();
  const acting = useActing();
  const { saveMade } = useSaveFile();
  const columns = useMemo(
    (): readonly DataColumn<ExportEntry>[] => [
      {
        id: 'at',
        title: words.when,
        value: (row) => row.at,
        cell: (row) => <span className="no-wrap">{instant.at(row.at)}</span>,
      },
      { id: 'what', title: words.what, value: (row) => words.whatWord[row.what] ?? row.what },
      { id: 'name', title: words.file, value: (row) => row.name, width: 'wide' },
      { id: 'rows', title: words.rows, kind: 'number', value: (row) => row.rows },
      { id: 'hash', title: words.hash, value: (row) => row.sha256.slice(0, HASH_SHOWN) },
      { id: 'initials', title: words.initials, value: (row) => row.initials || settingsLog.unsigned },
    ],
    [words, settingsLog, instant],
  );
  const saveAll = (): void =>
    void acting
      .ask(async (workspace) => ok(await workspace.exportRows()))
      .then(async (made) => {
        if (made !== undefined && (await saveMade('rows', made, cohort.summary.readings))) acting.say(words.saved);
      });
  return (
    <SettingsSection id="exports" lead={words.lead}>
      {exports.length === 0 ? (
        <p>{words.none}</p>
      ) : (
        <DataTable
          caption={words.caption}
          rows={exports}
          columns={columns}
          rowKey={(row) => `${row.at} ${row.sha256}`}
          fileName="exports"
          rowsWord={words.word({ n: exports.length })}
          initialSort={{ column: 'at', descending: true }}
        />
      )}
      <div className="row no-print">
        <button type="button" className="button" disabled={acting.busy} onClick={saveAll}>
          {words.all}
        </button>
        <span className="quiet small">{words.allNote}</span>
      </div>
      <ActNote acting={acting} />
    </SettingsSection>
  );
};
