'use client';

import { useEffect, useRef, type ReactNode } from 'react';
import { Sentence } from '../../_ui/sentence';
import styles from './import-screen.module.css';

interface StepHeadProps {
  readonly children: ReactNode;
  readonly detail?: ReactNode;
  readonly overline?: ReactNode;
}

/** The sentence of a new step; it takes the focus, so that whoever hears the page knows that the step has changed. */
export const StepHead = ({ children, detail, overline }: StepHeadProps) => {
  const head = useRef<HTMLDivElement>(null);
  useEffect(() => {
    head.current?.focus();
  }, []);
  return (
    <div ref={head} tabIndex={-1} className={styles.stepHead}>
      <Sentence detail={detail} overline={overline}>
        {children}
      </Sentence>
    </div>
  );
};
