'use client';

import { useState } from 'react';
import type { NotSeenRow } from '../../../lib/cohort/types/due-lists';
import { useFormatters, useMessages } from '../../_state/language-provider';
import { FilterLink } from '../../_ui/filter-link';
import { usePrinting } from '../../_ui/use-printing';
import { ContactSection } from './contact-section';
import styles from './not-seen-section.module.css';

const SHOWN = 10;

/** Who missed a planned time twelve weeks ago or longer and has not come since, the longest unseen first. */
export const NotSeenSection = ({ rows }: { readonly rows: readonly NotSeenRow[] }) => {
  const { due: words } = useMessages();
  const formatters = useFormatters();
  const printing = usePrinting();
  const [open, setOpen] = useState(false);
  const n = rows.length;
  const shown = open || printing ? n : SHOWN;
  const toggle = (
    <button
      type="button"
      className="button no-print"
      aria-expanded={open}
      onClick={() => {
        setOpen(!open);
      }}
    >
      {open ? words.fewer : words.all({ n })}
    </button>
  );
  return (
    <ContactSection
      title={words.notSeen}
      note={words.shownOf({ shown: Math.min(n, shown), all: n })}
      empty={words.notSeenEmpty}
      count={n}
      foot={
        <>
          {n > SHOWN ? toggle : null}
          <p className="quiet small">
            {words.notSeenNote} {words.endIt}
          </p>
        </>
      }
    >
      {rows.slice(0, shown).map((row) => {
        const missed = formatters.date(row.missedSince);
        return (
          <li key={row.clientKey} className={styles.line}>
            <FilterLink className={styles.client} href={`/client/?c=${String(row.clientKey)}`}>
              <bdi>{row.client}</bdi>
            </FilterLink>
            <span>
              {row.last === null
                ? words.notSeenNever({ missed })
                : words.notSeenSince({ day: formatters.date(row.last), missed })}
            </span>
            <span className="quiet small">
              <bdi>{row.program}</bdi>
            </span>
          </li>
        );
      })}
    </ContactSection>
  );
};
