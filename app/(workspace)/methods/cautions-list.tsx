'use client';

import styles from './methods-screen.module.css';

/** Known limits as sentences; nothing where none is known. */
export const CautionsList = ({ cautions }: { readonly cautions: readonly string[] }) =>
  cautions.length === 0 ? null : (
    <ul className={styles.points}>
      {cautions.map((caution) => (
        <li key={caution}>{caution}</li>
      ))}
    </ul>
  );
