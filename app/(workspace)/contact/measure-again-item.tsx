'use client';

import type { MeasureAgainRow } from '../../../lib/cohort/types/contact-lists';
import { ContactItem } from './contact-item';
import { measureAgainSentences } from './measure-again-sentences';
import { useWording } from './use-wording';

/** A client to measure again, as a paragraph. */
export const MeasureAgainItem = ({ row }: { readonly row: MeasureAgainRow }) => {
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
    </ContactItem>
  );
};
