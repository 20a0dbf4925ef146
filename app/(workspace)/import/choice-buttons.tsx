'use client';

import type { ReactNode } from 'react';
import styles from './import-screen.module.css';

interface ChoiceButtonsProps {
  readonly choices: readonly { readonly key: string; readonly label: string; readonly onChoose: () => void }[];
  readonly busy: boolean;
  readonly later: ReactNode;
}

/** The answers of a question as buttons. */
export const ChoiceButtons = ({ choices, busy, later }: ChoiceButtonsProps) => (
  <div className={styles.buttons}>
    {choices.map(({ key, label, onChoose }) => (
      <button key={key} type="button" className="button" disabled={busy} onClick={onChoose}>
        <bdi>{label}</bdi>
      </button>
    ))}
    {later}
  </div>
);
