'use client';

import type { ReactNode } from 'react';
import styles from './fact-list.module.css';

/** Terms and what is true of them; those without anything are left out. */
export const FactList = ({ facts }: { readonly facts: readonly (readonly [string, ReactNode])[] }) => (
  <dl className={styles.facts}>
    {facts
      .filter(([, fact]) => fact !== '' && fact !== null && fact !== undefined)
      .map(([term, fact]) => (
        <div key={term}>
          <dt>{term}</dt>
          <dd>{fact}</dd>
        </div>
      ))}
  </dl>
);
