'use client';

import { useState } from 'react';
import type { AgainReason, ContactLists, MeasureAgainRow } from '../../../lib/cohort/types/contact-lists';
import { useFormatters, useMessages } from '../../_state/language-provider';
import { usePrinting } from '../../_ui/use-printing';
import { ContactSection } from './contact-section';
import { MeasureAgainItem } from './measure-again-item';
import styles from './measure-again-list.module.css';

/** So many rows are read; the others wait behind one press. */
const SHOWN = 12;

interface Group {
  readonly why: AgainReason;
  readonly rows: readonly MeasureAgainRow[];
  readonly all: number;
}

/** Rows in groups by why, in their order; of the first rows only. */
const groupsOf = (rows: readonly MeasureAgainRow[], shown: number): readonly Group[] =>
  [...new Set(rows.slice(0, shown).map(({ why }) => why))].map((why) => ({
    why,
    rows: rows.slice(0, shown).filter((row) => row.why === why),
    all: rows.filter((row) => row.why === why).length,
  }));

/** Whom to measure again, grouped by why. */
export const MeasureAgainList = ({ lists }: { readonly lists: ContactLists }) => {
  const { contact: words } = useMessages();
  const formatters = useFormatters();
  const printing = usePrinting();
  const [open, setOpen] = useState(false);
  const rows = lists.measureAgain;
  const n = rows.length;
  const shown = open || printing ? n : SHOWN;
  return (
    <ContactSection
      title={words.measureAgain}
      note={`${words.measureAgainFor} · ${words.shownOf({ shown: Math.min(shown, n), all: n })}`}
      empty={words.emptyAgain}
      count={n}
      foot={
        n > SHOWN ? (
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
      {groupsOf(rows, shown).map((group) => (
        <li key={group.why} className={styles.group}>
          <h3>{`${words.groups[group.why]} · ${formatters.number(group.all)}`}</h3>
          <ul>
            {group.rows.map((row) => (
              <MeasureAgainItem key={row.clientKey} row={row} />
            ))}
          </ul>
        </li>
      ))}
    </ContactSection>
  );
};
