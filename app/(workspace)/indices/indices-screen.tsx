'use client';

import type { ClientDetail } from '../../../lib/cohort/types/client-detail';
import type { IndexPoint } from '../../../lib/cohort/types/cohort-summary';
import { useMessages } from '../../_state/language-provider';
import { useCohortQuery } from '../../_state/use-cohort-query';
import { useSession } from '../../_state/workspace-provider';
import { Answered } from '../../_ui/answered';
import { FilterLink } from '../../_ui/filter-link';
import { Sentence } from '../../_ui/sentence';
import { IndicesView } from './indices-view';
import { useClientPath } from './use-client-path';

interface IndexAnswer {
  readonly points: readonly IndexPoint[];
  readonly client: ClientDetail | undefined;
}

/** Indices: fat-free mass and fat mass for the height, and one client's path where the address names one. */
export const IndicesScreen = () => {
  const messages = useMessages();
  const { cohort } = useSession();
  const { clientKey, clear } = useClientPath();
  const query = useCohortQuery<IndexAnswer>(`indices ${clientKey ?? ''}`, async (open, filter, signal) => ({
    points: await open.indices(filter, signal),
    client: clientKey === null ? undefined : await open.client(clientKey, filter, signal),
  }));
  if (!cohort.summary.hasImpedance) {
    const { missing } = messages.indices;
    return (
      <div className="stack">
        <Sentence detail={missing.body}>{missing.title}</Sentence>
        <p className="measure">{missing.remedy}</p>
        <FilterLink className="button" href="/import/">
          {messages.importScreen.title}
        </FilterLink>
      </div>
    );
  }
  return (
    <Answered query={query}>
      {({ points, client }) => <IndicesView points={points} client={client} onClear={clear} />}
    </Answered>
  );
};
