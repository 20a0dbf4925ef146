'use client';

import { useId, type ReactNode } from 'react';
import { parseIsoDate } from '../../../lib/core/iso-date';
import { useFormatters, useMessages } from '../../_state/language-provider';
import { useInstantWords } from '../../_state/use-instant-words';
import { useFilter } from '../../_state/use-filter';
import { useValueWords } from '../../_state/use-value-words';
import { useSession } from '../../_state/workspace-provider';
import { FilterLink } from '../../_ui/filter-link';
import { conditionShares } from './condition-shares';
import styles from './data-state.module.css';

const Line = ({ term, children }: { readonly term: string; readonly children: ReactNode }) => (
  <div className={styles.line}>
    <dt>{term}</dt>
    <dd>{children}</dd>
  </div>
);

const NewestFile = () => {
  const words = useMessages().thisWeek;
  const formatters = useFormatters();
  const { files } = useSession();
  const newest = files[files.length - 1];
  if (newest === undefined) return words.noFile;
  const date = parseIsoDate(newest.importedOn.slice(0, 10));
  const on = date === undefined ? newest.importedOn : formatters.date(date);
  return (
    <>
      <bdi>{words.fileLine({ name: newest.name, rows: newest.rows, on })}</bdi>
      {files.length > 1 ? ` ${words.moreFiles({ n: files.length - 1 })}` : ''}
    </>
  );
};

const ErrorStudy = () => {
  const messages = useMessages();
  const formatters = useFormatters();
  const words = messages.thisWeek;
  const { cohort } = useSession();
  const { filter } = useFilter();
  const value = useValueWords()(cohort.lean);
  const row = cohort.precision(filter.level).find(({ measure }) => measure === cohort.lean);
  if (row === undefined || row.lsc === null) return words.noError({ value: value.title });
  const lsc = row.form === 'log' ? formatters.percent(Math.expm1(row.lsc), 1) : value.amount(row.lsc);
  const df = row.outsideDf ?? (row.tier === 5 ? row.dfWithin : row.dfBetween);
  const line = words.errorLine({
    value: value.title,
    lsc,
    tier: messages.reasons.tier[row.tier],
    df,
    clients: row.clients,
  });
  return (
    <>
      {line}
      {row.provisional ? ` ${words.provisional}` : ''}
    </>
  );
};

/** When the clinic was backed up last, and what has changed since. */
const LastBackup = () => {
  const words = useMessages().thisWeek;
  const instant = useInstantWords();
  const { keeping, clinic } = useSession();
  const { lastBackup, changesSinceBackup } = keeping;
  if (lastBackup === null && clinic.kind === 'demo') return words.demoBackup;
  if (lastBackup === null) return words.neverBackedUp({ n: changesSinceBackup });
  return `${words.backedUp({ when: instant.ago(lastBackup.at) })}, ${words.changesSince({ n: changesSinceBackup })}`;
};

const Overdue = () => {
  const words = useMessages().thisWeek;
  const formatters = useFormatters();
  const { keepUntil } = useSession().keeping;
  const date = keepUntil === null ? undefined : parseIsoDate(keepUntil.slice(0, 10));
  return words.overdueSince({ date: date === undefined ? '' : formatters.date(date) });
};

/** What the answers stand on: files, open questions, error study, conditions, comparisons. */
export const DataState = ({ title }: { readonly title: string }) => {
  const messages = useMessages();
  const words = messages.thisWeek;
  const formatters = useFormatters();
  const { cohort, waiting, settings, keeping, corrections, setAside } = useSession();
  const changed = messages.shell.changedByPeople({ corrections: corrections.length, setAside: setAside.length });
  const { filter } = useFilter();
  const id = useId();
  const { summary } = cohort;
  const shares = conditionShares(summary.coverage);
  return (
    <section aria-labelledby={id} className={styles.state}>
      <h2 id={id}>{title}</h2>
      <dl>
        <Line term={words.newestFile}>
          <NewestFile />
        </Line>
        <Line term={words.waiting}>
          {waiting === 0 ? (
            words.nothingWaiting
          ) : (
            <FilterLink className={styles.link} href="/import/#questions">
              {words.waitingRows({ n: waiting })}
            </FilterLink>
          )}
        </Line>
        {changed === '' ? null : <Line term={words.corrected}>{changed}</Line>}
        <Line term={words.lastBackup}>
          <FilterLink className={styles.link} href="/settings/#keeping">
            <LastBackup />
          </FilterLink>
        </Line>
        {keeping.overdue ? (
          <Line term={words.retention}>
            <FilterLink className={styles.link} href="/settings/#privacy">
              <Overdue />
            </FilterLink>
          </Line>
        ) : null}
        <Line term={words.errorStudy}>
          <FilterLink className={styles.link} href="/repeatability/">
            <ErrorStudy />
          </FilterLink>
        </Line>
        <Line term={words.conditions}>
          <FilterLink className={styles.link} href="/comparability/#record">
            {shares === undefined || !summary.conditionsKnown
              ? words.conditionsNone
              : words.conditionShares({
                  recorded: formatters.percent(shares.recorded),
                  byProcedure: formatters.percent(shares.byProcedure),
                  unknown: formatters.percent(shares.unknown),
                  notRecorded: formatters.percent(shares.notRecorded),
                })}
            {settings.procedures.length > 0 ? ` ${words.byProcedureSaid}` : ''}
          </FilterLink>
        </Line>
        <Line term={words.pairs}>
          <FilterLink className={styles.link} href="/comparability/">
            {words.pairsUsed({ setting: messages.filter.pairsOption[filter.comparable] })}{' '}
            {words.pairsEach(summary.pairsBySetting)}
          </FilterLink>
        </Line>
      </dl>
    </section>
  );
};
