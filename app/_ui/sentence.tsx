import type { ReactNode } from 'react';
import styles from './sentence.module.css';

interface SentenceProps {
  /** The finding, a sentence. */
  readonly children: ReactNode;
  /** What it stands on: n, error, exclusions. */
  readonly detail?: ReactNode;
  /** Small line above: whose finding it is. */
  readonly overline?: ReactNode;
  /** Beside the sentence: what can be done with the whole page. */
  readonly actions?: ReactNode;
}

/** The heading of a screen: a finding in the serif, and below it what it stands on. */
export const Sentence = ({ children, detail, overline, actions }: SentenceProps) => (
  <div className={styles.head}>
    <div>
      {overline === undefined ? null : <p className={styles.overline}>{overline}</p>}
      <h1 className={styles.sentence}>{children}</h1>
      {detail === undefined ? null : <div className={styles.detail}>{detail}</div>}
    </div>
    {actions === undefined ? null : <div className={styles.actions}>{actions}</div>}
  </div>
);
