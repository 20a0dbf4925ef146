import type { ReactNode } from 'react';
import styles from './mapping-step.module.css';

// What scrolls has to be reached by keyboard (WCAG 2.1.1).
const FOCUSABLE = { tabIndex: 0 } as const;

interface ScrollRegionProps {
  readonly label: string;
  readonly children: ReactNode;
}

/** A small wide table in a frame that scrolls sideways. */
export const ScrollRegion = ({ label, children }: ScrollRegionProps) => (
  <div className={styles.scroll} role="region" aria-label={label} {...FOCUSABLE}>
    {children}
  </div>
);
