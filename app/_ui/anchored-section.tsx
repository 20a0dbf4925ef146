import type { ReactNode } from 'react';
import styles from './anchored-section.module.css';

interface AnchoredSectionProps {
  readonly id: string;
  readonly title: string;
  /** What the section is about, in a sentence. */
  readonly lead?: string | undefined;
  /** Whether it also stands on paper; it does where nothing is said. */
  readonly printed?: boolean;
  readonly className?: string | undefined;
  readonly children: ReactNode;
}

/** One section of a long page with its anchor, heading and a sentence. */
export const AnchoredSection = ({ id, title, lead, printed = true, className, children }: AnchoredSectionProps) => (
  <section
    id={id}
    className={[styles.section, className, printed ? undefined : 'no-print'].filter(Boolean).join(' ')}
    aria-labelledby={`${id}-title`}
  >
    <h2 id={`${id}-title`}>{title}</h2>
    {lead === undefined ? null : <p className={styles.lead}>{lead}</p>}
    {children}
  </section>
);
