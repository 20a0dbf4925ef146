'use client';

import { useMemo } from 'react';
import type { ClientListRow } from '../../../lib/cohort/types/cohort-summary';
import { namesOfClients } from '../../../lib/workspace/names-of-clients';
import { useFormatters, useMessages } from '../../_state/language-provider';
import { useCohortQuery } from '../../_state/use-cohort-query';
import { useSession } from '../../_state/workspace-provider';
import { DataTable } from '../../_ui/data-table';
import { Sentence } from '../../_ui/sentence';
import { Failing, Loading } from '../../_ui/states';
import { clientColumns, type NamedClient } from './client-columns';

const ClientsView = ({ rows: listed }: { readonly rows: readonly ClientListRow[] }) => {
  const { clients: words } = useMessages();
  const formatters = useFormatters();
  const { cohort, marks, settings } = useSession();
  const rows = useMemo((): readonly NamedClient[] => {
    const namesOf = namesOfClients({ marks, settings });
    return listed.map((row) => ({ ...row, names: namesOf(row) }));
  }, [listed, marks, settings]);
  const columns = useMemo(() => clientColumns(words), [words]);
  const visits = rows.reduce((sum, row) => sum + row.visits, 0);
  const { firstVisit, asOf } = cohort.summary;
  return (
    <>
      <Sentence overline={words.title} detail={words.detail}>
        {words.headline({ n: rows.length, visits, from: formatters.date(firstVisit), to: formatters.date(asOf) })}
      </Sentence>
      <div className="sheet">
        <DataTable
          caption={words.caption}
          captionHidden
          rows={rows}
          columns={columns}
          rowKey={(row) => String(row.clientKey)}
          href={(row) => `/client/?c=${row.clientKey}`}
          fileName="clients"
          rowsWord={words.word}
          searchLabel={words.search}
          initialSort={{ column: 'client', descending: false }}
        />
      </div>
    </>
  );
};

/** All clients, with search. */
export const ClientsScreen = () => {
  const rows = useCohortQuery('clients', (cohort, filter, signal) => cohort.clients(filter, signal));
  if (rows.kind === 'failed') return <Failing heading error={rows.error} onRetry={rows.retry} />;
  if (rows.kind === 'ready') return <ClientsView rows={rows.value} />;
  if (rows.previous !== undefined) return <ClientsView rows={rows.previous} />;
  return <Loading heading onCancel={rows.cancel} />;
};
