import type { DueRow } from '../../../lib/cohort/types/due-lists';
import type { Formatters } from '../../../lib/core/formatters';
import { daysBetween, type IsoDate } from '../../../lib/core/iso-date';
import type { Messages } from '../../../lib/core/messages/en';

/** One client's paragraph on *Invite*, in its parts. */
export interface DueSentences {
  readonly finding: string;
  readonly more: string;
  readonly next: string;
}

/** What is planned and until when it counts, what was missed, and when the client was seen last. */
export const dueSentences = (row: DueRow, asOf: IsoDate, words: Messages['due'], f: Formatters): DueSentences => {
  const overdue = row.when === 'overdue';
  const planned = words.planned({
    review: row.windowTo !== null,
    week: row.week,
    day: f.date(row.due),
    overdueWeeks: overdue ? Math.floor(daysBetween(row.due, asOf) / 7) : null,
  });
  const window =
    row.windowTo === null
      ? ''
      : `; ${(row.windowTo < asOf ? words.windowClosed : words.windowOpen)({ day: f.date(row.windowTo) })}`;
  const missed = row.missedSince === null ? [] : [words.missed({ day: f.date(row.missedSince) })];
  const last = row.last === null ? words.neverSeen : words.lastSeen({ day: f.date(row.last.date) });
  return {
    finding: `${planned}${window}.`,
    more: [...missed, last].join(' '),
    next: overdue ? words.nextOverdue : words.nextDue,
  };
};
