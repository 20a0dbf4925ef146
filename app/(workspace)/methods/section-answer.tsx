'use client';

import type { ReactNode } from 'react';
import type { CohortQuery } from '../../_state/use-cohort-query';
import { Failing, Loading } from '../../_ui/states';

interface SectionAnswerProps<T> {
  readonly query: CohortQuery<T>;
  readonly children: (value: T) => ReactNode;
}

/** A section once its answer is there; the answer before stays while the next is awaited. */
export const SectionAnswer = <T,>({ query, children }: SectionAnswerProps<T>) => {
  if (query.kind === 'failed') return <Failing error={query.error} onRetry={query.retry} />;
  if (query.kind === 'ready') return children(query.value);
  if (query.previous === undefined) return <Loading onCancel={query.cancel} />;
  return <div aria-busy>{children(query.previous)}</div>;
};
