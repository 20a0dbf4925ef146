'use client';

import type { MeasureAgainRow } from '../../../lib/cohort/types/contact-lists';
import { ContactItem } from './contact-item';
import { UseBaseline } from './use-baseline';
import { measureAgainSentences } from './measure-again-sentences';
import { useWording } from './use-wording';

interface MeasureAgainItemProps {
  readonly row: MeasureAgainRow;
  /** Without what can be done about it here. */
  readonly short?: boolean;
}

/** A client to measure again, as a paragraph. */
export const MeasureAgainItem = ({ row, short = false }: MeasureAgainItemProps) => {
  const wording = useWording();
  const sentences = measureAgainSentences(row, wording);
  return (
    <ContactItem
      clientKey={row.clientKey}
      client={row.client}
      place={row.program}
      change={row.change}
      strip={row.strip}
    >
      <p>{sentences.finding}</p>
      {sentences.more === '' ? null : <p>{sentences.more}</p>}
      <p>
        <strong>{wording.messages.contact.next}</strong> {sentences.next}
      </p>
      {short ? null : <UseBaseline row={row} />}
    </ContactItem>
  );
};
