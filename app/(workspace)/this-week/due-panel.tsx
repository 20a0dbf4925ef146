'use client';

import { useId } from 'react';
import type { DueLists } from '../../../lib/cohort/types/due-lists';
import { useFormatters, useMessages } from '../../_state/language-provider';
import { FilterLink } from '../../_ui/filter-link';
import styles from './due-panel.module.css';

/** Who is due this week and next, with last position and device, and the way to the sheet that is printed. */
export const DuePanel = ({ lists }: { readonly lists: DueLists }) => {
  const { due: words } = useMessages();
  const formatters = useFormatters();
  const id = useId();
  const rows = lists.invite.filter(({ when }) => when !== 'overdue');
  const now = rows.filter(({ when }) => when === 'this-week').length;
  return (
    <section className="sheet" aria-labelledby={id}>
      <h2 id={id}>{words.weekTitle}</h2>
      {rows.length === 0 ? (
        <p>{lists.planned ? words.weekEmpty : words.noPlan}</p>
      ) : (
        <>
          <p className="quiet small">{words.weekNote({ now, next: rows.length - now })}</p>
          <ul className={styles.rows}>
            {rows.map((row) => (
              <li key={row.clientKey}>
                <span className="no-wrap">{formatters.dayMonth(row.due)}</span>
                <span>
                  <FilterLink className={styles.client} href={`/client/?c=${String(row.clientKey)}`}>
                    <bdi>{row.client}</bdi>
                  </FilterLink>{' '}
                  <span className="quiet small">
                    <bdi>{row.last === null ? words.firstVisit : words.lastWay(row.last)}</bdi>
                  </span>
                </span>
              </li>
            ))}
          </ul>
        </>
      )}
      <FilterLink className={styles.sheet} href="/visit-sheet/">
        {words.toSheet}
      </FilterLink>
    </section>
  );
};
