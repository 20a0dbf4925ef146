'use client';

import type { TalkToRow } from '../../../lib/cohort/types/contact-lists';
import { useFilter } from '../../_state/use-filter';
import { ContactItem } from './contact-item';
import { talkToSentences } from './talk-to-sentences';
import { useWording } from './use-wording';

interface TalkToItemProps {
  readonly row: TalkToRow;
  /** Only what changed and what could explain it. */
  readonly short?: boolean;
}

/** A client to talk to, as a paragraph. */
export const TalkToItem = ({ row, short = false }: TalkToItemProps) => {
  const wording = useWording();
  const { filter } = useFilter();
  const { messages } = wording;
  const sentences = talkToSentences(row, filter.level, wording);
  const place = messages.contact.program({ program: row.program, week: row.weekOfProgram });
  return (
    <ContactItem clientKey={row.clientKey} client={row.client} place={place} change={row.change} strip={row.strip}>
      <p>{sentences.finding}</p>
      <p className="quiet">
        {short
          ? (row.seenAtTwoVisits ? messages.contact.seenTwice : messages.contact.seenOnce) + '.'
          : sentences.howSure}
      </p>
      {short || sentences.couldExplain === '' ? null : <p>{sentences.couldExplain}</p>}
      <p>
        <strong>{messages.contact.next}</strong> {sentences.next}
      </p>
    </ContactItem>
  );
};
