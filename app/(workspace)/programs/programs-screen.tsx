'use client';

import { parseAsStringLiteral, useQueryState } from 'nuqs';
import type { ProgramRow } from '../../../lib/cohort/types/program-row';
import { useMessages } from '../../_state/language-provider';
import { useCohortQuery } from '../../_state/use-cohort-query';
import { Answered } from '../../_ui/answered';
import { SegmentedChoice } from '../../_ui/segmented-choice';
import { ProgramsView } from './programs-view';

const PURPOSES = ['baseline-latest', 'consecutive'] as const;
const parsePurpose = parseAsStringLiteral(PURPOSES).withDefault('baseline-latest');

/** Programs: did anything change by more than our own error, program by program, in the order of their names. */
export const ProgramsScreen = () => {
  const words = useMessages().programs;
  const [purpose, setPurpose] = useQueryState('purpose', parsePurpose);
  const query = useCohortQuery<readonly ProgramRow[]>(`programs ${purpose}`, (cohort, filter, signal) =>
    cohort.programs(filter, purpose, signal),
  );
  const choice = (
    <SegmentedChoice
      label={words.purposeLabel}
      value={purpose}
      options={PURPOSES.map((value) => ({ value, label: words.purpose[value] }))}
      onChange={(value) => void setPurpose(value)}
    />
  );
  return <Answered query={query}>{(rows) => <ProgramsView rows={rows} purpose={purpose} choice={choice} />}</Answered>;
};
