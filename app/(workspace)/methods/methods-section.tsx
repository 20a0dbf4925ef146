'use client';

import type { ReactNode } from 'react';
import { useMessages } from '../../_state/language-provider';
import styles from './methods-screen.module.css';
import type { SectionId } from './sections';

interface MethodsSectionProps {
  readonly id: SectionId;
  readonly lead?: string;
  /** Whether it also stands on paper; it does where nothing is said. */
  readonly printed?: boolean;
  readonly children: ReactNode;
}

/** One section with its anchor, heading and a sentence. */
export const MethodsSection = ({ id, lead, printed = true, children }: MethodsSectionProps) => {
  const words = useMessages().methods;
  return (
    <section id={id} className={`${styles.section ?? ''} ${printed ? '' : 'no-print'}`} aria-labelledby={`${id}-title`}>
      <h2 id={`${id}-title`}>{words.sections[id]}</h2>
      {lead === undefined ? null : <p className={styles.lead}>{lead}</p>}
      {children}
    </section>
  );
};
