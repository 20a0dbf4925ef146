'use client';

import type { DueRow } from '../../../lib/cohort/types/due-lists';
import { shownName } from '../../../lib/workspace/client-marks';
import { useFormatters, useMessages } from '../../_state/language-provider';
import { FactList } from '../../_ui/fact-list';
import { FilterLink } from '../../_ui/filter-link';
import { useClientMarks } from '../client/use-client-marks';
import { sheetFacts } from './sheet-facts';
import styles from './visit-sheet.module.css';

/** One client of the sheet: who, what is planned, and how to measure. */
export const SheetClient = ({ row }: { readonly row: DueRow }) => {
  const { visitSheet: words } = useMessages();
  const formatters = useFormatters();
  const name = shownName(useClientMarks(row.client), row);
  const planned = (row.windowTo === null ? words.visit : words.review)({ week: row.week });
  return (
    <li className={styles.client}>
      <h3>
        <FilterLink href={`/client/?c=${String(row.clientKey)}`}>
          <bdi>{row.client}</bdi>
        </FilterLink>
        {name === null ? null : (
          <>
            {' · '}
            <bdi>{name}</bdi>
          </>
        )}
      </h3>
      <p className="quiet small">
        <bdi>{row.program}</bdi>, {planned}
        {row.when === 'overdue' ? `, ${words.dueOn({ day: formatters.date(row.due) })}` : ''}
      </p>
      <FactList facts={sheetFacts(row, words, formatters)} />
    </li>
  );
};
