'use client';

import { useMessages } from '../_state/language-provider';
import { FilterLink } from './filter-link';
import { Sentence } from './sentence';

/** An address that leads nowhere. */
export const NotFoundNotice = () => {
  const messages = useMessages().shell;
  return (
    <>
      <Sentence detail={messages.notFoundDetail}>{messages.notFound}</Sentence>
      <FilterLink className="button" href="/">
        {messages.toThisWeek}
      </FilterLink>
    </>
  );
};
