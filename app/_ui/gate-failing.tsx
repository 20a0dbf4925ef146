'use client';

import { useState } from 'react';
import type { AppError } from '../../lib/core/app-error';
import { useMessages } from '../_state/language-provider';
import { useWorkspace } from '../_state/workspace-provider';
import { ActNote } from './act-note';
import styles from './gate-screen.module.css';

/** A clinic that cannot be opened: what happened, what is true of the data, what to try, and the way to the demo. */
export const GateFailing = ({ error, onRetry }: { readonly error: AppError; readonly onRetry: () => void }) => {
  const words = useMessages().shell;
  const { run } = useWorkspace();
  const [busy, setBusy] = useState(false);
  const [second, setSecond] = useState<AppError | undefined>(undefined);
  const known = words.gate[error.code];
  const openDemo = async (): Promise<void> => {
    setBusy(true);
    const failed = await run((workspace) => workspace.openDemo());
    if (failed === undefined) return;
    setBusy(false);
    setSecond(failed);
  };
  return (
    <div className={styles.screen} role="alert">
      <h1>{known?.title ?? words.failedTitle}</h1>
      <p className={styles.what}>{error.message}</p>
      <p>{known?.data ?? words.nothingLost}</p>
      <div>
        <h2>{words.tryThis}</h2>
        <ul className={styles.tries}>
          <li>{error.remedy}</li>
          {known?.tries.map((text) => (
            <li key={text}>{text}</li>
          ))}
        </ul>
      </div>
      <div className="row">
        <button type="button" className="button button-strong" onClick={onRetry}>
          {words.retry}
        </button>
        <button type="button" className="button" disabled={busy} onClick={() => void openDemo()}>
          {words.openDemo}
        </button>
      </div>
      <ActNote acting={{ busy: false, error: second, done: undefined }} />
    </div>
  );
};
