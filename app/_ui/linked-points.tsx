'use client';

import { useEffect, useRef, type ReactNode } from 'react';
import styles from './linked-points.module.css';

interface LinkedPointsProps {
  /** Keys of the points that stand out; undefined when none does. */
  readonly keys: ReadonlySet<string> | undefined;
  readonly children: ReactNode;
}

/** A figure whose points answer to the table beside it: the points of the row in hand stand out. */
export const LinkedPoints = ({ keys, children }: LinkedPointsProps) => {
  const frame = useRef<HTMLDivElement>(null);
  useEffect(() => {
    for (const point of frame.current?.querySelectorAll('[data-key]') ?? []) {
      point.toggleAttribute('data-linked', keys?.has(point.getAttribute('data-key') ?? '') === true);
    }
  }, [keys]);
  return (
    <div ref={frame} className={keys === undefined ? styles.all : styles.some}>
      {children}
    </div>
  );
};
