import type { Settings } from '../cohort/settings';
import type { ImportAnswers } from '../import/judge';

/** The settings' answers that an import needs. */
export const importAnswers = (settings: Settings): ImportAnswers => ({
  aliases: settings.answers.flatMap((answer) =>
    answer.kind === 'same-client' ? answer.ids.map((id) => ({ id, client: answer.client })) : [],
  ),
  farOff: settings.answers.flatMap((answer) =>
    answer.kind === 'far-off'
      ? [
          {
            client: answer.client,
            visitDate: answer.visitDate,
            column: answer.column,
            value: answer.value,
            decision: answer.decision,
          },
        ]
      : [],
  ),
});
