'use client';

import type { ClientEnrolment } from '../../../lib/cohort/types/client-detail';
import { useFormatters, useMessages } from '../../_state/language-provider';
import { useActing } from '../../_state/use-acting';
import { useSession } from '../../_state/workspace-provider';
import { ActNote } from '../../_ui/act-note';
import { withoutAnswer } from '../import/answers';

interface ChosenBaselineProps {
  readonly client: string;
  readonly enrolment: ClientEnrolment;
}

/** That a person chose the baseline, what it would be by date, and the way back. */
export const ChosenBaseline = ({ client, enrolment }: ChosenBaselineProps) => {
  const words = useMessages().contact;
  const formatters = useFormatters();
  const { settings, keeping } = useSession();
  const acting = useActing();
  const { baseline, baselineByDate, baselineChosen, program, start } = enrolment;
  if (!baselineChosen || baseline === null) return null;
  const date = formatters.date(baseline);
  return (
    <div>
      <p>
        {baselineByDate === null
          ? words.baselineChosenOnly({ date })
          : words.baselineChosen({ date, byDate: formatters.date(baselineByDate) })}
      </p>
      <button
        type="button"
        className="button no-print"
        disabled={acting.busy || !keeping.writer}
        onClick={() => {
          const answer = { kind: 'baseline', client, program, start, visitDate: baseline } as const;
          void acting.start((workspace) => workspace.saveSettings(withoutAnswer(settings, answer)));
        }}
      >
        {words.baselineBack}
      </button>
      <ActNote acting={acting} />
    </div>
  );
};
