'use client';

import type { ReactNode } from 'react';
import type { CohortQuery } from '../_state/use-cohort-query';
import styles from './answered.module.css';
import { Failing, Loading } from './states';

interface AnsweredProps<T> {
  readonly query: CohortQuery<T>;
  readonly children: (value: T) => ReactNode;
}

/** A screen once its answer is there; the answer before stays while the next is awaited. */
export const Answered = <T,>({ query, children }: AnsweredProps<T>) => {
  switch (query.kind) {
    case 'failed':
      return <Failing heading error={query.error} onRetry={query.retry} />;
    case 'ready':
      return <div aria-busy={false}>{children(query.value)}</div>;
    case 'loading':
      if (query.previous === undefined) return <Loading heading onCancel={query.cancel} />;
      return (
        <div aria-busy className={styles.awaiting}>
          {children(query.previous)}
        </div>
      );
  }
};
