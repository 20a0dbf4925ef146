import type { ChangeRow } from '../../../lib/cohort/types/change-row';
import type { ClientEnrolment } from '../../../lib/cohort/types/client-detail';
import { meantBeside } from '../../../lib/workspace/meant-beside';
import type { Wording } from './change-phrase';

/**
 * Whether a change goes the way that is meant, as a fact beside it; nothing where nobody said which way or there is no
 * result. `own`: what is meant for this client's weight, where that is known.
 */
export const meantSentence = (
  row: ChangeRow,
  { messages, valueWords, programs, lean }: Wording,
  own: ClientEnrolment['weightIntended'] = null,
): readonly string[] => {
  const meant = meantBeside(row, { programs, lean }, own);
  if (meant === undefined) return [];
  const { intention, beside, byProgram } = meant;
  const value = valueWords(row.measure).title;
  return [messages.contact.meant.sentence({ value, program: byProgram ? row.program : null, intention, beside })];
};
