'use client';

import { useMessages } from '../../_state/language-provider';
import { FilterLink } from '../../_ui/filter-link';

/** Ways to the two pages that are printed of a client. */
export const PageLinks = ({ clientKey }: { readonly clientKey: number }) => {
  const words = useMessages().clientPages;
  return (
    <>
      <FilterLink className="button" href={`/client/?c=${clientKey}&page=file`}>
        {words.forFile}
      </FilterLink>
      <FilterLink className="button" href={`/client/?c=${clientKey}&page=client`}>
        {words.forClient}
      </FilterLink>
    </>
  );
};
