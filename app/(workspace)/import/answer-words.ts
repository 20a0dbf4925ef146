import type { Answer } from '../../../lib/cohort/settings';
import type { Formatters } from '../../../lib/core/formatters';
import type { IsoDate } from '../../../lib/core/iso-date';
import type { importStack } from '../../../lib/core/messages/en/import-stack';
import { shownCell } from './shown-cell';

/** An answer in one sentence: about whom or what, and what was said. */
export const answerWords = (answer: Answer, words: ReturnType<typeof importStack>, f: Formatters): string => {
  switch (answer.kind) {
    case 'far-off': {
      const decided = answer.decision === 'keep' ? words.farOff.kept : words.farOff.refused;
      const date = f.dateShort(answer.visitDate as IsoDate);
      return `${answer.client}, ${date}, ${answer.column} ${shownCell(answer.value).text}. ${decided}`;
    }
    case 'same-client':
      return words.ids.answeredSame(answer);
    case 'different-clients':
      return words.ids.answeredDifferent(answer);
    case 'birth-date':
      return words.birth.answered({ client: answer.client, date: f.dateShort(answer.date as IsoDate) });
    case 'sex-for-equations':
      return words.sexes.answered(answer);
    case 'heights':
      return words.heights.answered(answer);
    case 'baseline':
      return words.baseline.answered({ ...answer, date: f.dateShort(answer.visitDate as IsoDate) });
    case 'reading':
      return words.reading.answered({ ...answer, date: f.dateShort(answer.visitDate as IsoDate) });
  }
};
