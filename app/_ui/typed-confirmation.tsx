'use client';

import { useId, useState, type FormEvent, type ReactNode } from 'react';
import { useMessages } from '../_state/language-provider';
import styles from './typed-confirmation.module.css';

interface TypedConfirmationProps {
  /** What has to be typed, letter by letter. */
  readonly text: string;
  /** What the button does. */
  readonly act: string;
  readonly busy: boolean;
  readonly onConfirm: () => void;
  /** Beside the button. */
  readonly children?: ReactNode;
}

/** For what cannot be undone: the button works once the text was typed. */
export const TypedConfirmation = ({ text, act, busy, onConfirm, children }: TypedConfirmationProps) => {
  const messages = useMessages();
  const id = useId();
  const [typed, setTyped] = useState('');
  const fits = typed.trim() === text.trim();
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    if (fits && !busy) onConfirm();
  };
  return (
    <form className={styles.form} onSubmit={submit}>
      <label htmlFor={id}>
        <bdi>{messages.settings.typed({ text })}</bdi>
      </label>
      <input
        id={id}
        autoComplete="off"
        spellCheck={false}
        value={typed}
        onChange={(event) => {
          setTyped(event.target.value);
        }}
      />
      <div className="row">
        <button type="submit" className="button button-strong" disabled={!fits || busy}>
          <bdi>{act}</bdi>
        </button>
        {children}
      </div>
    </form>
  );
};
