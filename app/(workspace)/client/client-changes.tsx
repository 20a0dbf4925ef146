'use client';

import { useId } from 'react';
import { useFormatters, useMessages } from '../../_state/language-provider';
import type { Act } from '../../_state/act-provider';
import { useActing } from '../../_state/use-acting';
import { useInstantWords } from '../../_state/use-instant-words';
import { useSession } from '../../_state/workspace-provider';
import { ActNote } from '../../_ui/act-note';
import styles from './client-readings.module.css';
import { dateOf } from './reading-columns';
import { sameRow } from './row-changes';
import type { ClientRow } from './use-client-rows';

interface Line {
  readonly id: string;
  readonly what: string;
  readonly reason: string;
  readonly takeBack: Act;
}

const takeBack = (act: Act): Act => act;

/** What the clinic corrected or set aside for this client, each with the way back. */
const useLines = (rows: readonly ClientRow[]): readonly Line[] => {
  const messages = useMessages();
  const words = messages.client;
  const formatters = useFormatters();
  const instant = useInstantWords();
  const { corrections, setAside } = useSession();
  const said = (reason: string, at: string, initials: string): string =>
    words.reasonLine({ reason, when: instant.at(at), by: initials });
  return rows.flatMap((row): readonly Line[] => {
    const date = dateOf(row, formatters);
    return [
      ...corrections
        .filter((correction) => sameRow(correction.row, row.row))
        .map(({ id, column, from, to, reason, at, initials }) => ({
          id,
          what: words.correctionLine({
            date,
            column: messages.client.columnWord[column] ?? column,
            from: from === '' ? words.correct.nothing : from,
            to: to === '' ? words.correct.nothing : to,
          }),
          reason: said(reason, at, initials),
          takeBack: takeBack((workspace) => workspace.removeCorrection(id)),
        })),
      ...setAside
        .filter((entry) => sameRow(entry.row, row.row))
        .map(({ id, reason, at, initials }) => ({
          id,
          what: words.setAsideLine({ date }),
          reason: said(reason, at, initials),
          takeBack: takeBack((workspace) => workspace.bringBack(id)),
        })),
    ];
  });
};

export const ClientChanges = ({ rows }: { readonly rows: readonly ClientRow[] }) => {
  const words = useMessages().client;
  const { keeping } = useSession();
  const acting = useActing();
  const titleId = useId();
  const lines = useLines(rows);
  return (
    <section className="sheet" aria-labelledby={titleId}>
      <h2 id={titleId}>{words.changedHere}</h2>
      {lines.length === 0 ? (
        <p className="quiet">{words.changedNone}</p>
      ) : (
        <ul className={styles.list}>
          {lines.map(({ id, what, reason, takeBack }) => (
            <li key={id}>
              <p className="serif">
                <bdi>{what}</bdi>
              </p>
              <p className="quiet small">
                <bdi>{reason}</bdi>
              </p>
              <button
                type="button"
                className={styles.act}
                disabled={acting.busy || !keeping.writer}
                aria-label={words.takeBackNamed({ what })}
                onClick={() => void acting.start(takeBack)}
              >
                {words.takeBack}
              </button>
            </li>
          ))}
        </ul>
      )}
      <ActNote acting={acting} />
    </section>
  );
};
