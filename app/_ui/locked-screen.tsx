'use client';

import { useState, type FormEvent } from 'react';
import type { AppError } from '../../lib/core/app-error';
import { useMessages } from '../_state/language-provider';
import { useWorkspace } from '../_state/workspace-provider';
import { ActNote } from './act-note';
import styles from './gate-screen.module.css';
import { GateWays } from './gate-ways';
import { PassphraseField } from './passphrase-field';

/** A sealed clinic before its passphrase was given. */
export const LockedScreen = () => {
  const messages = useMessages();
  const words = messages.shell.locked;
  const { run, state } = useWorkspace();
  const [passphrase, setPassphrase] = useState('');
  const [busy, setBusy] = useState(false);
  const [error, setError] = useState<AppError | undefined>(undefined);

  const tryIt = async (action: Parameters<typeof run>[0]): Promise<void> => {
    setBusy(true);
    setError(undefined);
    const failed = await run(action);
    // Where it worked, the clinic stands in the place of this screen.
    if (failed === undefined) return;
    setBusy(false);
    setError(failed);
  };
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    if (passphrase !== '' && !busy) void tryIt((workspace) => workspace.unlock(passphrase));
  };
  return (
    <div className={styles.screen}>
      <h1>{words.title}</h1>
      <p>
        <bdi>{state.kind === 'failed' ? state.error.message : null}</bdi> {words.lead}
      </p>
      <form className={styles.form} onSubmit={submit}>
        <PassphraseField
          label={messages.settingsKeeping.passphrase}
          purpose="current-password"
          value={passphrase}
          onChange={setPassphrase}
        />
        <div className="row">
          <button type="submit" className="button button-strong" disabled={busy || passphrase === ''}>
            {busy ? words.unlocking : words.unlock}
          </button>
        </div>
      </form>
      <ActNote acting={{ busy: false, error, done: undefined }} />
      <GateWays code="locked" />
    </div>
  );
};
