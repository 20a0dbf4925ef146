'use client';

import type { MeasureAgainRow } from '../../../lib/cohort/types/contact-lists';
import { useFormatters, useMessages } from '../../_state/language-provider';
import { useActing } from '../../_state/use-acting';
import { useSession } from '../../_state/workspace-provider';
import { ActNote } from '../../_ui/act-note';
import { withAnswer } from '../import/answers';

/** Another baseline for one enrolment, where only the baseline is at fault: by a person's choice alone, with a way back. */
export const UseBaseline = ({ row }: { readonly row: MeasureAgainRow }) => {
  const words = useMessages().contact;
  const formatters = useFormatters();
  const { settings, keeping } = useSession();
  const acting = useActing();
  const { otherBaseline, client, program, programStart } = row;
  if (otherBaseline === null) return null;
  const date = formatters.date(otherBaseline);
  return (
    <div className="no-print">
      <button
        type="button"
        className="button"
        aria-label={words.useBaselineOf({ client, date })}
        disabled={acting.busy || !keeping.writer}
        onClick={() => {
          const answer = { kind: 'baseline', client, program, start: programStart, visitDate: otherBaseline } as const;
          void acting.start((workspace) => workspace.saveSettings(withAnswer(settings, answer)));
        }}
      >
        {words.useBaseline({ date })}
      </button>
      <ActNote acting={acting} />
    </div>
  );
};
