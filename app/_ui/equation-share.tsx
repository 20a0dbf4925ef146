'use client';

import type { EquationShareWords } from '../_state/equation-share';
import { useMessages } from '../_state/language-provider';
import { FilterLink } from './filter-link';

/** Under the tables of a computed value: how many visits lie inside the group that its equation was made for. */
export const EquationShare = ({ share }: { readonly share: EquationShareWords | undefined }) => {
  const words = useMessages().methods.share;
  if (share === undefined) return null;
  return (
    <p className="small quiet">
      {share.sentence} <FilterLink href="/methods/">{words.more}</FilterLink>
    </p>
  );
};
