'use client';

import type { ReactNode } from 'react';
import type { DueLists } from '../../../lib/cohort/types/due-lists';
import type { CohortQuery } from '../../_state/use-cohort-query';
import { Failing, Loading } from '../../_ui/states';

interface DueAnswerProps {
  readonly query: CohortQuery<DueLists>;
  readonly children: (lists: DueLists) => ReactNode;
}

/** A part of a screen that needs who is due; the answer before stays while the next is awaited. */
export const DueAnswer = ({ query, children }: DueAnswerProps) => {
  if (query.kind === 'failed') return <Failing error={query.error} onRetry={query.retry} />;
  const lists = query.kind === 'ready' ? query.value : query.previous;
  if (lists !== undefined) return children(lists);
  return query.kind === 'loading' ? <Loading onCancel={query.cancel} /> : null;
};
