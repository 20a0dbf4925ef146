'use client';

import type { MeasureId } from '../../lib/measures/measure-id';
import { useMessages } from '../_state/language-provider';
import { useCohortQuery } from '../_state/use-cohort-query';
import { useSession } from '../_state/workspace-provider';
import { FilterLink } from './filter-link';

/** Under the figures of a computed value: how many visits lie inside the group that its equation was made for. */
export const EquationShare = ({ measure }: { readonly measure: MeasureId }) => {
  const words = useMessages().methods.share;
  const { cohort, settings } = useSession();
  const query = useCohortQuery('equation fits', (open, filter, signal) => open.equationFits(filter, signal));
  const { equation } = cohort.catalogue.measure(measure);
  if (equation === undefined || query.kind !== 'ready') return null;
  const fit = query.value.find((one) => one.equation.id === equation.id);
  if (fit === undefined || fit.visits === 0) return null;
  const excluded = settings.outsideEquation === 'exclude';
  return (
    <p className="small quiet">
      {words.inside({ equation: equation.name, inside: fit.inside, visits: fit.visits, excluded })}{' '}
      <FilterLink href="/methods/">{words.more}</FilterLink>
    </p>
  );
};
