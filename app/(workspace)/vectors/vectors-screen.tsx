'use client';

import type { VectorAnalysis } from '../../../lib/cohort/types/vector-analysis';
import { useMessages } from '../../_state/language-provider';
import { useCohortQuery } from '../../_state/use-cohort-query';
import { useSession } from '../../_state/workspace-provider';
import { Answered } from '../../_ui/answered';
import { FilterLink } from '../../_ui/filter-link';
import { Sentence } from '../../_ui/sentence';
import { VectorsView } from './vectors-view';

/** Vectors: where people stand by resistance and reactance for their height, one sex at a time. */
export const VectorsScreen = () => {
  const messages = useMessages();
  const { cohort } = useSession();
  const query = useCohortQuery<VectorAnalysis>('vectors', (open, filter, signal) => open.vectors(filter, signal));
  if (!cohort.summary.hasImpedance) {
    const { missing } = messages.vectors;
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
  return <Answered query={query}>{(analysis) => <VectorsView analysis={analysis} />}</Answered>;
};
