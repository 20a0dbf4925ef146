'use client';

import { useState, type FormEvent } from 'react';
import { useMessages } from '../../_state/language-provider';
import { useActing } from '../../_state/use-acting';
import { useAct } from '../../_state/act-provider';
import { ActNote } from '../../_ui/act-note';
import { Check } from '../../_ui/check';
import { PassphrasePair, passphraseProblem } from '../../_ui/passphrase-pair';
import styles from './settings-screen.module.css';

/** A first or another passphrase for the clinic, after what forgetting it means. */
export const NewPassphrase = ({ sealed }: { readonly sealed: boolean }) => {
  const words = useMessages().settingsKeeping.seal;
  const acting = useActing();
  const { say } = useAct();
  const [pair, setPair] = useState({ first: '', second: '' });
  const [understood, setUnderstood] = useState(false);
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    void acting
      .startLong((workspace, step) => workspace.setPassphrase(pair.first, step))
      .then((done) => {
        if (!done) return;
        setPair({ first: '', second: '' });
        setUnderstood(false);
        say({ text: sealed ? words.changed : words.sealedNow, failed: false });
      });
  };
  const ready = understood && passphraseProblem(pair) === undefined;
  return (
    <form className={styles.panel} onSubmit={submit}>
      <h3>{sealed ? words.change : words.act}</h3>
      <p className={styles.warning}>{words.warning}</p>
      <PassphrasePair pair={pair} onChange={setPair} />
      <Check label={words.understood} checked={understood} onChange={setUnderstood} />
      <button type="submit" className="button button-strong" disabled={acting.busy || !ready}>
        {sealed ? words.change : words.act}
      </button>
      <ActNote acting={acting} />
    </form>
  );
};
