'use client';

import type { DueLists } from '../../../lib/cohort/types/due-lists';
import { useCohortQuery, type CohortQuery } from '../../_state/use-cohort-query';

/** Who is due and who was not seen, under the filter. */
export const useDue = (): CohortQuery<DueLists> =>
  useCohortQuery('due', (cohort, filter, signal) => cohort.due(filter, signal));
