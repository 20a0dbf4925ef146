import { daysBetween } from '../../../lib/core/iso-date';
import type { Formatters } from '../../../lib/core/formatters';
import type { Messages } from '../../../lib/core/messages/en';
import type { Cohort } from '../../../lib/cohort/types/cohort';
import type { ChangeRow } from '../../../lib/cohort/types/change-row';
import type { Settings } from '../../../lib/cohort/settings';
import type { ValueWords } from '../../_state/use-value-words';

/** What a sentence about a client needs besides the row. */
export interface Wording {
  readonly messages: Messages;
  readonly formatters: Formatters;
  readonly valueWords: (id: ChangeRow['measure']) => ValueWords;
  readonly guardsOf: Cohort['guards'];
  readonly programs: Settings['programs'];
  /** The clinic's lean value. */
  readonly lean: Cohort['lean'];
  /** Whose error judges a pair. */
  readonly errorFrom: Cohort['errorFrom'];
}

/** *Fat-free mass ▼ down 2.7 kg since 8 September 2025 (12 weeks)*. */
export const changePhrase = (change: ChangeRow, { messages, formatters, valueWords }: Wording): string => {
  const words = valueWords(change.measure);
  return messages.contact.changed({
    value: words.title,
    down: change.change < 0,
    amount: words.amounts(change.change, change.lsc ?? 0)[0],
    since: formatters.date(change.from),
    weeks: Math.round(daysBetween(change.from, change.to) / 7),
  });
};

/** Against what: the threshold, and on which side of it the change lies. */
export const againstPhrase = (change: ChangeRow, { messages, valueWords }: Wording, justBeyond = false): string => {
  if (change.lsc === null) return messages.contact.noError;
  const [, lsc] = valueWords(change.measure).amounts(change.change, change.lsc);
  if (change.result !== 'up' && change.result !== 'down') return messages.contact.withinError({ lsc });
  return justBeyond ? messages.contact.justBeyond({ lsc }) : messages.contact.beyond({ lsc });
};
