'use client';

import { usePathname } from 'next/navigation';
import { useEffect } from 'react';
import { useAct } from '../_state/act-provider';
import { useMessages } from '../_state/language-provider';
import styles from './status-line.module.css';

/** One line at the foot of the window: what was just undone, done again, or could not be. */
export const StatusLine = () => {
  const messages = useMessages();
  const { said, say } = useAct();
  const path = usePathname();
  useEffect(() => {
    say(undefined);
  }, [path, say]);
  return (
    <div className={styles.place}>
      <p role="status">{said === undefined || said.failed ? null : <bdi>{said.text}</bdi>}</p>
      <p role="alert">{said?.failed === true ? <bdi>{said.text}</bdi> : null}</p>
      {said === undefined ? null : (
        <button
          type="button"
          className={styles.close}
          aria-label={messages.shell.dismiss}
          onClick={() => {
            say(undefined);
          }}
        >
          ×
        </button>
      )}
    </div>
  );
};
