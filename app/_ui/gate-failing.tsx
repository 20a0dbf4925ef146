'use client';

import { useId } from 'react';
import type { AppError } from '../../lib/core/app-error';
import { useMessages } from '../_state/language-provider';
import styles from './gate-screen.module.css';
import { GateWays } from './gate-ways';
import { RestorePanel } from './restore-panel';

/** Errors at which no other clinic, no demo and no backup would open either. */
const NO_WAY_IN: ReadonlySet<string> = new Set(['denied', 'cleared', 'newer_app', 'engine_not_started']);

/** A clinic that cannot be opened: what happened, what is true of the data, what to try, and the other ways in. */
export const GateFailing = ({ error, onRetry }: { readonly error: AppError; readonly onRetry: () => void }) => {
  const messages = useMessages();
  const words = messages.shell;
  const restoreId = useId();
  const known = words.gate[error.code];
  return (
    <div className={styles.screen}>
      <div className={styles.said} role="alert">
        <h1>{known?.title ?? words.failedTitle}</h1>
        {error.message === `${known?.title ?? ''}.` ? null : <p className={styles.what}>{error.message}</p>}
        <p>{known?.data ?? words.nothingLost}</p>
        <h2>{words.tryThis}</h2>
        <ul className={styles.tries}>
          {[known?.remedy ?? error.remedy, ...(known?.tries ?? [])].map((text) => (
            <li key={text}>{text}</li>
          ))}
        </ul>
      </div>
      {known?.remedy === undefined ? (
        <button type="button" className="button button-strong" onClick={onRetry}>
          {words.retry}
        </button>
      ) : null}
      {NO_WAY_IN.has(error.code) ? null : (
        <>
          <GateWays code={error.code} />
          <section aria-labelledby={restoreId}>
            <h2 id={restoreId}>{messages.settingsKeeping.restore.title}</h2>
            <RestorePanel />
          </section>
        </>
      )}
    </div>
  );
};
