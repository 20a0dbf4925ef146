'use client';

import { useMessages } from '../../_state/language-provider';
import styles from './client-readings.module.css';
import type { ReadingAct } from './reading-act';

interface ReadingActionsProps {
  readonly date: string;
  readonly place: string;
  readonly isSetAside: boolean;
  readonly disabled: boolean;
  readonly onAct: (act: ReadingAct) => void;
}

/** What can be done with one reading, at the end of its row. */
export const ReadingActions = ({ date, place, isSetAside, disabled, onAct }: ReadingActionsProps) => {
  const words = useMessages().client.readings;
  const act = (kind: ReadingAct, label: string, name: string) => (
    <button
      type="button"
      className={styles.act}
      disabled={disabled}
      aria-label={name}
      onClick={() => {
        onAct(kind);
      }}
    >
      {label}
    </button>
  );
  return (
    <span className={styles.acts}>
      {act('correct', words.correct, words.correctNamed({ date, place }))}
      {isSetAside
        ? act('bring-back', words.bringBack, words.bringBackNamed({ date, place }))
        : act('set-aside', words.setAside, words.setAsideNamed({ date, place }))}
    </span>
  );
};
