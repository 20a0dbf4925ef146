'use client';

import type { ReactNode } from 'react';
import styles from './settings-screen.module.css';

/** Terms and what is true of them, one under the other. */
export const Facts = ({ facts }: { readonly facts: readonly (readonly [string, ReactNode])[] }) => (
  <dl className={styles.facts}>
    {facts.map(([term, fact]) => (
      <div key={term}>
        <dt>{term}</dt>
        <dd>{fact}</dd>
      </div>
    ))}
  </dl>
);
