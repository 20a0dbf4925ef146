'use client';

import { useId, type ReactNode } from 'react';
import { Empty } from '../../_ui/states';
import styles from './contact-section.module.css';

interface ContactSectionProps {
  readonly title: string;
  /** Whose list it is, and how much of it is shown. */
  readonly note: string;
  readonly empty: string;
  readonly count: number;
  readonly children: ReactNode;
  /** Below the rows: the way to all of them. */
  readonly foot?: ReactNode;
}

/** One list on its sheet. */
export const ContactSection = ({ title, note, empty, count, children, foot }: ContactSectionProps) => {
  const id = useId();
  return (
    <section className={`sheet ${styles.section ?? ''}`} aria-labelledby={id}>
      <div className={styles.head}>
        <h2 id={id}>{title}</h2>
        <p className="quiet small">{note}</p>
      </div>
      {count === 0 ? <Empty title={empty} /> : <ul>{children}</ul>}
      {foot === undefined ? null : <div className={styles.foot}>{foot}</div>}
    </section>
  );
};
