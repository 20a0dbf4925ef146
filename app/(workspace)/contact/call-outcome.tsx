'use client';

import type { TalkToRow } from '../../../lib/cohort/types/contact-lists';
import { CALL_OUTCOMES, callKind, callValue, type ContactCall } from '../../../lib/workspace/contact-calls';
import { useMessages } from '../../_state/language-provider';
import { useActing } from '../../_state/use-acting';
import { useInstantWords } from '../../_state/use-instant-words';
import { useSession } from '../../_state/workspace-provider';
import { ActNote } from '../../_ui/act-note';
import styles from './call-outcome.module.css';

interface CallOutcomeProps {
  readonly row: TalkToRow;
  readonly tried: ContactCall | undefined;
}

/** What came of a call: one press, signed and dated; the row then rests until the client's next visit. */
export const CallOutcome = ({ row, tried }: CallOutcomeProps) => {
  const words = useMessages().contact;
  const instant = useInstantWords();
  const acting = useActing();
  const { keeping } = useSession();
  return (
    <div className={`no-print ${styles.call ?? ''}`}>
      {tried === undefined ? null : (
        <p className="quiet small">{words.notReached({ when: instant.at(tried.at), initials: tried.initials })}</p>
      )}
      <div className={styles.row} role="group" aria-label={words.calledAbout({ client: row.client })}>
        <span className="quiet small">{words.call}</span>
        {CALL_OUTCOMES.map((outcome) => (
          <button
            key={outcome}
            type="button"
            className="button"
            disabled={acting.busy || !keeping.writer}
            onClick={() => {
              void acting.start((workspace) =>
                workspace.writeMark(row.client, callKind(row.change.to), callValue(outcome, row)),
              );
            }}
          >
            {words.outcomes[outcome]}
          </button>
        ))}
      </div>
      <ActNote acting={acting} />
    </div>
  );
};
