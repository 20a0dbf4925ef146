'use client';

import { useMessages } from '../../_state/language-provider';
import { useCohortQuery } from '../../_state/use-cohort-query';
import { AnchoredSection } from '../../_ui/anchored-section';
import { Failing, Loading } from '../../_ui/states';
import { CrossCheckPair } from './cross-check-pair';

/** Every two devices that people were measured on for a cross-check. */
export const CrossCheckSection = () => {
  const words = useMessages().devices.crossCheck;
  const query = useCohortQuery('cross-checks', (open, filter, signal) => open.crossChecks(filter, signal));
  const checks = query.kind === 'ready' ? query.value : query.kind === 'loading' ? query.previous : undefined;
  return (
    <AnchoredSection id="cross-check" title={words.title} lead={words.lead} className="sheet">
      {query.kind === 'failed' ? <Failing error={query.error} onRetry={query.retry} /> : null}
      {query.kind === 'loading' && checks === undefined ? <Loading /> : null}
      {checks?.length === 0 ? <p>{words.none}</p> : null}
      {(checks ?? []).map((check) => (
        <CrossCheckPair key={`${check.first}|${check.second}`} check={check} />
      ))}
    </AnchoredSection>
  );
};
