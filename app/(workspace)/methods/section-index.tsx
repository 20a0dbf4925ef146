'use client';

import { useMessages } from '../../_state/language-provider';
import styles from './methods-screen.module.css';
import { SECTIONS } from './sections';

/** The sections of the page, to go to. */
export const SectionIndex = () => {
  const words = useMessages().methods;
  return (
    <nav className={`${styles.index ?? ''} no-print`} aria-label={words.index}>
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
