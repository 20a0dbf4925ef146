'use client';

import { parseAsInteger, parseAsStringLiteral, useQueryState } from 'nuqs';
import { useMessages } from '../../_state/language-provider';
import { useCohortQuery } from '../../_state/use-cohort-query';
import { FilterLink } from '../../_ui/filter-link';
import { Sentence } from '../../_ui/sentence';
import { Failing, Loading } from '../../_ui/states';
import { ClientView } from './client-view';
import { FilePage } from './file-page';
import { SheetPage } from './sheet-page';

const NoClient = () => {
  const words = useMessages().client;
  return (
    <>
      <Sentence detail={words.noneRemedy}>{words.none}</Sentence>
      <FilterLink className="button" href="/clients/">
        {words.toList}
      </FilterLink>
    </>
  );
};

const OneClient = ({ clientKey }: { readonly clientKey: number }) => {
  const [page] = useQueryState('page', parseAsStringLiteral(['file', 'client']));
  const detail = useCohortQuery(`client ${clientKey}`, (cohort, filter, signal) =>
    cohort.client(clientKey, filter, signal),
  );
  if (detail.kind === 'failed') return <Failing heading error={detail.error} onRetry={detail.retry} />;
  const shown = detail.kind === 'ready' ? detail.value : detail.previous;
  if (shown?.clientKey === clientKey) {
    if (page === 'file') return <FilePage detail={shown} />;
    return page === 'client' ? <SheetPage detail={shown} /> : <ClientView detail={shown} />;
  }
  return detail.kind === 'loading' ? <Loading heading onCancel={detail.cancel} /> : <NoClient />;
};

/** One client, by the opaque key in the address. */
export const ClientScreen = () => {
  const [clientKey] = useQueryState('c', parseAsInteger);
  return clientKey === null ? <NoClient /> : <OneClient key={clientKey} clientKey={clientKey} />;
};
