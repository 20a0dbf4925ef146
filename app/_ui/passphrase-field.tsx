'use client';

import { useId, useState } from 'react';
import { useMessages } from '../_state/language-provider';
import styles from './passphrase-field.module.css';

interface PassphraseFieldProps {
  readonly label: string;
  readonly value: string;
  readonly onChange: (text: string) => void;
  /** `new-password` where one is chosen, `current-password` where one is asked. */
  readonly purpose: 'new-password' | 'current-password';
  /** What has to be known, or what is wrong with it. */
  readonly hint?: string | undefined;
  /** False for the second field of one form: a browser takes two names for two forms. */
  readonly named?: boolean;
}

/** A passphrase, hidden unless shown. */
export const PassphraseField = ({ label, value, onChange, purpose, hint, named = true }: PassphraseFieldProps) => {
  const messages = useMessages();
  const words = messages.settingsKeeping;
  const id = useId();
  const [shown, setShown] = useState(false);
  return (
    <div className={styles.field}>
      <label htmlFor={id}>{label}</label>
      {/* Browsers that keep passphrases ask for a name beside them. */}
      {named ? <input type="text" autoComplete="username" value={messages.common.appName} readOnly hidden /> : null}
      <div className={styles.line}>
        <input
          id={id}
          type={shown ? 'text' : 'password'}
          autoComplete={purpose}
          spellCheck={false}
          value={value}
          aria-describedby={hint === undefined ? undefined : `${id}-hint`}
          onChange={(event) => {
            onChange(event.target.value);
          }}
        />
        <label className={styles.show}>
          <input
            type="checkbox"
            checked={shown}
            onChange={(event) => {
              setShown(event.target.checked);
            }}
          />{' '}
          {words.show}
        </label>
      </div>
      {hint === undefined ? null : (
        <p id={`${id}-hint`} className="quiet small">
          {hint}
        </p>
      )}
    </div>
  );
};
