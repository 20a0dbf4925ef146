'use client';

import type { Acting } from '../_state/use-acting';
import { useMessages } from '../_state/language-provider';
import styles from './act-note.module.css';

/** What came of a change, under its button: under way, done, or why not and what to try. */
export const ActNote = ({ acting }: { readonly acting: Pick<Acting, 'busy' | 'error' | 'done'> }) => {
  const words = useMessages().settings;
  const { busy, error, done } = acting;
  return (
    <>
      <p className={styles.note} role="status">
        {busy ? `${words.working} …` : done}
      </p>
      {error === undefined ? null : (
        <div className={styles.error} role="alert">
          <p className={styles.message}>{error.message}</p>
          <p>{error.remedy}</p>
        </div>
      )}
    </>
  );
};
