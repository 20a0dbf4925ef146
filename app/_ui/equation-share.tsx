'use client';

import type { EquationShareWords } from '../_state/equation-share';
import { useMessages } from '../_state/language-provider';
import { FilterLink } from './filter-link';

/** Under the tables of a computed value, whose figure says how many visits lie inside its equation's group: where to read why. */
export const EquationShare = ({ share }: { readonly share: EquationShareWords | undefined }) => {
  const words = useMessages().methods.share;
  if (share === undefined) return null;
  return (
    <p className="small quiet">
      <FilterLink href="/methods/">{words.more}</FilterLink>
    </p>
  );
};
