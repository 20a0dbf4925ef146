'use client';

import type { DueRow } from '../../../lib/cohort/types/due-lists';
import type { IsoDate } from '../../../lib/core/iso-date';
import { shownName } from '../../../lib/workspace/client-marks';
import { useFormatters, useMessages } from '../../_state/language-provider';
import { FilterLink } from '../../_ui/filter-link';
import { useClientMarks } from '../client/use-client-marks';
import styles from './contact-item.module.css';
import { dueSentences } from './due-sentences';

/** A client to invite, as a paragraph. */
export const InviteItem = ({ row, asOf }: { readonly row: DueRow; readonly asOf: IsoDate }) => {
  const messages = useMessages();
  const { finding, more, next } = dueSentences(row, asOf, messages.due, useFormatters());
  const name = shownName(useClientMarks(row.client), row);
  return (
    <li className={styles.item}>
      <div className={styles.who}>
        <FilterLink className={styles.client} href={`/client/?c=${String(row.clientKey)}`}>
          <bdi>{row.client}</bdi>
        </FilterLink>
        <span className="quiet small">
          <bdi>{name === null ? row.program : `${name} · ${row.program}`}</bdi>
        </span>
      </div>
      <div className={styles.paragraph}>
        <p>{finding}</p>
        <p className="quiet">{more}</p>
        <p>
          <strong>{messages.contact.next}</strong> {next}
        </p>
      </div>
    </li>
  );
};
