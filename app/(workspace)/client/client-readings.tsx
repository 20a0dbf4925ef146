'use client';

import { useMemo, useState } from 'react';
import { useFormatters, useMessages } from '../../_state/language-provider';
import { useActing } from '../../_state/use-acting';
import { useSession } from '../../_state/workspace-provider';
import { ActNote } from '../../_ui/act-note';
import { DataTable } from '../../_ui/data-table';
import { Empty, Loading } from '../../_ui/states';
import { ClientChanges } from './client-changes';
import { ClientWriting } from './client-writing';
import styles from './client-readings.module.css';
import { CorrectDialog } from './correct-dialog';
import type { ReadingAct } from './reading-act';
import { readingColumns } from './reading-columns';
import { rowChanges } from './row-changes';
import { rowsOfVisit } from './rows-of-visit';
import { SetAsideDialog } from './set-aside-dialog';
import { useClientRows, type ClientRow } from './use-client-rows';

interface Open {
  readonly act: ReadingAct;
  readonly row: ClientRow;
}

const keyOf = ({ row }: ClientRow): string => `${row.source} ${row.line} ${row.part}`;

/** The client's rows in the clinic's files: corrected, set aside, brought back; and notes. Not on paper. */
export const ClientReadings = ({ client }: { readonly client: string }) => {
  const messages = useMessages();
  const words = messages.client;
  const formatters = useFormatters();
  const session = useSession();
  const answer = useClientRows(client);
  const acting = useActing();
  const [open, setOpen] = useState<Open | undefined>(undefined);
  const { start } = acting;
  const columns = useMemo(() => {
    const onAct = (act: ReadingAct, row: ClientRow): void => {
      const aside = rowChanges(row.row, session.corrections, session.setAside).setAside;
      if (act === 'bring-back' && aside !== undefined) void start((workspace) => workspace.bringBack(aside.id));
      else setOpen({ act, row });
    };
    return readingColumns({ messages, formatters, session, onAct });
  }, [messages, formatters, session, start]);
  const rows = answer.kind === 'read' ? answer.rows : [];
  const aside = rows.filter(({ status }) => status === 'set-aside').length;
  const end = (said: string | undefined): void => {
    setOpen(undefined);
    acting.say(said);
  };
  return (
    <div className="stack-wide no-print">
      <div className="sheet">
        {answer.kind === 'asked' ? <Loading /> : null}
        {answer.kind === 'failed' ? <Empty title={words.readings.failed} /> : null}
        {answer.kind === 'read' ? (
          <>
            <DataTable
              caption={words.readings.title}
              rows={rows}
              columns={columns}
              rowKey={keyOf}
              fileName="client-readings"
              rowsWord={words.readings.word({ n: rows.length })}
              initialSort={{ column: 'date', descending: true }}
            />
            <p className="quiet small">
              {words.readings.lead}
              {aside === 0 ? null : ` ${messages.clientOwn.setAside({ n: aside })}`}
            </p>
          </>
        ) : null}
        <ActNote acting={acting} />
      </div>
      <div className={styles.grid}>
        <ClientChanges rows={rows} />
        <ClientWriting client={client} />
      </div>
      {open?.act === 'correct' ? <CorrectDialog row={open.row} onEnd={end} /> : null}
      {open?.act === 'set-aside' ? (
        <SetAsideDialog row={open.row} visit={rowsOfVisit(open.row, rows)} onEnd={end} />
      ) : null}
    </div>
  );
};
