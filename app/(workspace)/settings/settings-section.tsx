'use client';

import type { ReactNode } from 'react';
import { useMessages } from '../../_state/language-provider';
import type { SectionId } from './sections';
import styles from './settings-screen.module.css';

interface SettingsSectionProps {
  readonly id: SectionId;
  /** What the section is about, in a sentence. */
  readonly lead?: string;
  readonly children: ReactNode;
}

/** One section with its anchor, heading and a sentence. */
export const SettingsSection = ({ id, lead, children }: SettingsSectionProps) => {
  const words = useMessages().settings;
  return (
    <section id={id} className={styles.section} aria-labelledby={`${id}-title`}>
      <h2 id={`${id}-title`}>{words.sections[id]}</h2>
      {lead === undefined ? null : <p className={styles.lead}>{lead}</p>}
      {children}
    </section>
  );
};
