'use client';

import type { TalkToRow } from '../../../lib/cohort/types/contact-lists';
import type { ContactCall } from '../../../lib/workspace/contact-calls';
import { useFilter } from '../../_state/use-filter';
import { CallOutcome } from './call-outcome';
import { ContactItem } from './contact-item';
import { talkToSentences } from './talk-to-sentences';
import { useWording } from './use-wording';

interface TalkToItemProps {
  readonly row: TalkToRow;
  /** Only what changed and what could explain it. */
  readonly short?: boolean;
  /** Tried without an answer. */
  readonly tried?: ContactCall | undefined;
}

/** A client to talk to, as a paragraph. */
export const TalkToItem = ({ row, short = false, tried }: TalkToItemProps) => {
  const wording = useWording();
  const { filter } = useFilter();
  const { messages } = wording;
  const sentences = talkToSentences(row, filter.level, wording);
  const place = messages.contact.program({ program: row.program, week: row.weekOfProgram });
  const seen = row.seenAtTwoVisits ? messages.contact.seenTwice : messages.contact.seenOnce;
  const howSure = short && sentences.howSure !== '' ? `${seen}.` : sentences.howSure;
  return (
    <ContactItem clientKey={row.clientKey} client={row.client} place={place} change={row.change} strip={row.strip}>
      <p>{sentences.finding}</p>
      {short ? null : sentences.also.map((sentence) => <p key={sentence}>{sentence}</p>)}
      {howSure === '' ? null : <p className="quiet">{howSure}</p>}
      {short || sentences.couldExplain === '' ? null : <p>{sentences.couldExplain}</p>}
      <p>
        <strong>{messages.contact.next}</strong> {sentences.next}
      </p>
      {short ? null : <CallOutcome row={row} tried={tried} />}
    </ContactItem>
  );
};
