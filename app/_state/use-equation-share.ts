'use client';

import type { MeasureId } from '../../lib/measures/measure-id';
import { equationShare, type EquationShareWords } from './equation-share';
import { useMessages } from './language-provider';
import { useCohortQuery } from './use-cohort-query';
import { useSession } from './workspace-provider';

/** The share of visits inside the group of a value's equation under the present filter; undefined until it is known. */
export const useEquationShare = (measure: MeasureId): EquationShareWords | undefined => {
  const messages = useMessages();
  const { cohort, settings } = useSession();
  const query = useCohortQuery('equation fits', (open, filter, signal) => open.equationFits(filter, signal));
  if (query.kind !== 'ready') return undefined;
  return equationShare(
    query.value,
    cohort.catalogue.measure(measure),
    settings.outsideEquation === 'exclude',
    messages,
  );
};
