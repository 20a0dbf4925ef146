'use client';

import { useState } from 'react';
import type { AgainReason, ContactLists, MeasureAgainRow } from '../../../lib/cohort/types/contact-lists';
import { useFormatters, useMessages } from '../../_state/language-provider';
import { usePrinting } from '../../_ui/use-printing';
import { ContactSection } from './contact-section';
import { MeasureAgainItem } from './measure-again-item';
import styles from './measure-again-list.module.css';

/** So many rows of each group are read at once; the others wait behind one press. */
const SHOWN = 3;

interface Group {
  readonly why: AgainReason;
  readonly rows: readonly MeasureAgainRow[];
}

/** Rows in groups by why, in their order. */
const groupsOf = (rows: readonly MeasureAgainRow[]): readonly Group[] =>
  [...new Set(rows.map(({ why }) => why))].map((why) => ({ why, rows: rows.filter((row) => row.why === why) }));

/** Whom to measure again, grouped by why. */
export const MeasureAgainList = ({ lists }: { readonly lists: ContactLists }) => {
  const { contact: words } = useMessages();
  const formatters = useFormatters();
  const printing = usePrinting();
  const [open, setOpen] = useState(false);
  const rows = lists.measureAgain;
  const n = rows.length;
  const groups = groupsOf(rows);
  const shownOf = (group: Group) => (open || printing ? group.rows : group.rows.slice(0, SHOWN));
  const shown = groups.reduce((total, group) => total + shownOf(group).length, 0);
  const hasMore = groups.some((group) => group.rows.length > SHOWN);
  return (
    <ContactSection
      title={words.measureAgain}
      note={`${words.measureAgainFor} · ${words.shownOf({ shown, all: n })}`}
      empty={words.emptyAgain}
      count={n}
      foot={
        hasMore ? (
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
        ) : undefined
      }
    >
      {groups.map((group) => (
        <li key={group.why} className={styles.group}>
          <h3>{`${words.groups[group.why]} · ${formatters.number(group.rows.length)}`}</h3>
          <ul>
            {shownOf(group).map((row) => (
              <MeasureAgainItem key={row.clientKey} row={row} />
            ))}
          </ul>
        </li>
      ))}
    </ContactSection>
  );
};
