'use client';

import { parseAsStringLiteral, useQueryState } from 'nuqs';
import type { DueLists, DueRow } from '../../../lib/cohort/types/due-lists';
import { useFormatters, useMessages } from '../../_state/language-provider';
import { Answered } from '../../_ui/answered';
import { FilterLink } from '../../_ui/filter-link';
import { SegmentedChoice } from '../../_ui/segmented-choice';
import { Sentence } from '../../_ui/sentence';
import { Empty } from '../../_ui/states';
import { useDue } from '../contact/use-due';
import { SheetClient } from './sheet-client';
import { sheetPages } from './sheet-pages';
import styles from './visit-sheet.module.css';

const WHEN = ['this-week', 'next-week', 'overdue'] as const;

const SheetView = ({ lists }: { readonly lists: DueLists }) => {
  const { visitSheet: words, due } = useMessages();
  const formatters = useFormatters();
  const count = (when: DueRow['when']): number => lists.invite.filter((row) => row.when === when).length;
  const [now, next] = [count('this-week'), count('next-week')];
  const [chosen, choose] = useQueryState('when', parseAsStringLiteral(WHEN));
  const when = chosen ?? (now === 0 && next > 0 ? 'next-week' : 'this-week');
  const pages = sheetPages(
    lists.invite.filter((row) => row.when === when),
    words,
    formatters,
  );
  return (
    <>
      <div className="no-print">
        <Sentence overline={words.title} detail={<p>{lists.planned ? words.lead : due.noPlan}</p>}>
          {words.headline({ now, next })}
        </Sentence>
      </div>
      <div className={styles.tools}>
        <SegmentedChoice
          label={words.show}
          value={when}
          options={WHEN.map((value) => ({
            value,
            label: `${words.when[value]} · ${formatters.number(count(value))}`,
          }))}
          onChange={(value) => void choose(value)}
        />
        <button
          type="button"
          className="button button-strong"
          onClick={() => {
            window.print();
          }}
        >
          {words.print}
        </button>
        <FilterLink className="button" href="/checklist/">
          {words.checklist}
        </FilterLink>
      </div>
      {pages.length === 0 ? <Empty title={words.empty[when]} /> : null}
      {pages.map(({ title, rows }) => (
        <section key={title} className={`sheet ${styles.day ?? ''}`} aria-label={title}>
          <h2>
            {title} <span className="quiet small">{words.people({ n: rows.length })}</span>
          </h2>
          <ul>
            {rows.map((row) => (
              <SheetClient key={row.clientKey} row={row} />
            ))}
          </ul>
        </section>
      ))}
    </>
  );
};

/** Who is due, a printable page a day, with how each was measured last. */
export const VisitSheetScreen = () => <Answered query={useDue()}>{(lists) => <SheetView lists={lists} />}</Answered>;
