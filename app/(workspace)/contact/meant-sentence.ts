import { besideIntention } from '../../../lib/cohort/intended-direction';
import type { ChangeRow } from '../../../lib/cohort/types/change-row';
import type { ClientWeightIntention } from '../../../lib/cohort/weight-intention';
import type { Wording } from './change-phrase';

/**
 * Whether a change goes the way that is meant, as a fact beside it; nothing where nobody said which way or there is no
 * result. `own`: what is meant for this client's weight, where that is known.
 */
export const meantSentence = (
  { measure, program, result }: ChangeRow,
  { messages, valueWords, meantBy }: Wording,
  own: ClientWeightIntention | null = null,
): readonly string[] => {
  const ofProgram = meantBy(program, measure);
  const intention = measure === 'weight' && own !== null ? own : ofProgram;
  const beside = besideIntention(result, intention);
  if (beside === null || intention === null || intention === 'change') return [];
  const words = messages.contact.meant;
  return [
    words.sentence({
      value: valueWords(measure).title,
      program: intention === ofProgram ? program : null,
      intention,
      beside,
    }),
  ];
};
