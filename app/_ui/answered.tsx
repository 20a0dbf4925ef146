'use client';

import type { ReactNode } from 'react';
import type { CohortQuery } from '../_state/use-cohort-query';
import styles from './answered.module.css';
import { Failing, Loading } from './states';

interface AnsweredProps<T> {
  readonly query: CohortQuery<T>;
  /** Whether it is a part below a screen's own heading. */
  readonly part?: boolean;
  readonly children: (value: T) => ReactNode;
}

/** A screen, or a part of one, once its answer is there; the answer before stays while the next is awaited. */
export const Answered = <T,>({ query, part = false, children }: AnsweredProps<T>) => {
  switch (query.kind) {
    case 'failed':
      return <Failing heading={!part} error={query.error} onRetry={query.retry} />;
    case 'ready':
      return <div aria-busy={false}>{children(query.value)}</div>;
    case 'loading':
      if (query.previous === undefined) return <Loading heading={!part} onCancel={query.cancel} />;
      return (
        <div aria-busy className={styles.awaiting}>
          {children(query.previous)}
        </div>
      );
  }
};
