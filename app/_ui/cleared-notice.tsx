'use client';

import { useState } from 'react';
import { parseIsoDate } from '../../lib/core/iso-date';
import { useFormatters, useMessages } from '../_state/language-provider';
import { useKeepingSigns } from '../_state/use-keeping-signs';
import { FilterLink } from './filter-link';
import styles from './notice.module.css';

/** An earlier visit left its mark, and the clinics or a part of the storage are gone: this browser clears. */
export const ClearedNotice = () => {
  const messages = useMessages();
  const words = messages.shell.clearedSince;
  const formatters = useFormatters();
  const signs = useKeepingSigns();
  const [closed, setClosed] = useState(false);
  if (closed || (signs?.storage !== 'data-cleared' && signs?.storage !== 'partly-cleared')) return null;
  const day = signs.lastVisit === null ? undefined : parseIsoDate(signs.lastVisit);
  const date = day === undefined ? null : formatters.date(day);
  return (
    <aside className={styles.notice} aria-label={words.label}>
      <p className={styles.text}>
        {signs.storage === 'data-cleared' ? words.gone({ date }) : words.partly({ date })}{' '}
        <FilterLink href="/settings/#keeping">{messages.shell.firstStart.more}</FilterLink>
      </p>
      <button
        type="button"
        className="button"
        onClick={() => {
          setClosed(true);
        }}
      >
        {messages.shell.firstStart.close}
      </button>
    </aside>
  );
};
