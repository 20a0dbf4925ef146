'use client';

import { useMessages } from '../../_state/language-provider';
import { SECTIONS } from './sections';
import styles from './settings-screen.module.css';

/** The sections of the page, to go to. */
export const SectionIndex = () => {
  const words = useMessages().settings;
  return (
    <nav className={styles.index} aria-label={words.index}>
      <ul>
        {SECTIONS.map((section) => (
          <li key={section}>
            <a href={`#${section}`}>{words.sections[section]}</a>
          </li>
        ))}
      </ul>
    </nav>
  );
};
