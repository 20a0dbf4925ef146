'use client';

import type { Acting } from '../_state/use-acting';
import { useMessages } from '../_state/language-provider';
import styles from './act-note.module.css';
import { StepProgress } from './step-progress';

interface ActNoteProps {
  readonly acting: Pick<Acting, 'busy' | 'error' | 'done'> & Partial<Pick<Acting, 'progress' | 'cancel'>>;
}

/** What came of a change, under its button: under way and how far, done, or why not and what to try. */
export const ActNote = ({ acting }: ActNoteProps) => {
  const messages = useMessages();
  const words = messages.settings;
  const { busy, error, done, progress = null, cancel } = acting;
  return (
    <>
      <p className={styles.note} role="status">
        {!busy ? done : cancel === undefined ? `${words.working} …` : null}
      </p>
      {cancel === undefined ? null : (
        <div className={styles.long}>
          <StepProgress progress={progress} waiting={messages.importScreen.progress.starting} />
          <button type="button" className="button" onClick={cancel}>
            {messages.shell.cancel}
          </button>
        </div>
      )}
      {error === undefined ? null : (
        <div className={styles.error} role="alert">
          <p className={styles.message}>{error.message}</p>
          <p>{error.remedy}</p>
        </div>
      )}
    </>
  );
};
