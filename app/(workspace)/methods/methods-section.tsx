'use client';

import type { ReactNode } from 'react';
import { useMessages } from '../../_state/language-provider';
import styles from './methods-screen.module.css';
import type { SectionId } from './sections';

interface MethodsSectionProps {
  readonly id: SectionId;
  readonly lead?: string;
  readonly children: ReactNode;
}

/** One section with its anchor, heading and a sentence. */
export const MethodsSection = ({ id, lead, children }: MethodsSectionProps) => {
  const words = useMessages().methods;
  return (
    <section id={id} className={styles.section} aria-labelledby={`${id}-title`}>
      <h2 id={`${id}-title`}>{words.sections[id]}</h2>
      {lead === undefined ? null : <p className={styles.lead}>{lead}</p>}
      {children}
    </section>
  );
};
