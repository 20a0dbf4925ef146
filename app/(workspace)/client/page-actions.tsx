'use client';

import { useMessages } from '../../_state/language-provider';
import { FilterLink } from '../../_ui/filter-link';

/** On screen above a page: print it, or go back. Not on paper. */
export const PageActions = ({ clientKey }: { readonly clientKey: number }) => {
  const words = useMessages().clientPages;
  return (
    <>
      <FilterLink className="button" href={`/client/?c=${clientKey}`}>
        {words.back}
      </FilterLink>
      <button
        type="button"
        className="button button-strong"
        onClick={() => {
          window.print();
        }}
      >
        {words.print}
      </button>
    </>
  );
};
