'use client';

import { useId, type ReactNode } from 'react';
import { useMessages } from '../../_state/language-provider';
import styles from './import-screen.module.css';

interface AskFormProps {
  readonly ask: string;
  readonly why: string;
  readonly wrong: string | undefined;
  readonly children: ReactNode;
  /** Stands beside the button that answers. */
  readonly later: ReactNode;
  readonly onAnswer: () => void;
}

/** The frame of a question: what is asked, why, the choices, and the button that answers. */
export const AskForm = ({ ask, why, wrong, children, later, onAnswer }: AskFormProps) => {
  const words = useMessages().importScreen.columnQuestions;
  const askId = useId();
  return (
    <form
      className={styles.question}
      aria-labelledby={askId}
      onSubmit={(event) => {
        event.preventDefault();
        onAnswer();
      }}
    >
      <p id={askId} className={styles.asked}>
        <bdi>{ask}</bdi>
      </p>
      <p className="quiet">{why}</p>
      {children}
      <p role="alert" className={wrong === undefined ? undefined : styles.wrong}>
        {wrong}
      </p>
      <div className={styles.buttons}>
        <button type="submit" className="button button-strong">
          {words.answer}
        </button>
        {later}
      </div>
    </form>
  );
};
