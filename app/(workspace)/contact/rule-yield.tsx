'use client';

import type { ContactLists } from '../../../lib/cohort/types/contact-lists';
import { CALL_OUTCOMES, callYield, type ContactCall } from '../../../lib/workspace/contact-calls';
import { useFormatters, useMessages } from '../../_state/language-provider';
import { useSession } from '../../_state/workspace-provider';
import { FilterLink } from '../../_ui/filter-link';
import { RuleRetuning } from './rule-retuning';
import styles from './rule-yield.module.css';

interface RuleYieldProps {
  readonly lists: ContactLists;
  readonly calls: readonly ContactCall[];
}

/** The list's own yield: what each rule looked at, listed, and what came of the calls that it led to. */
export const RuleYield = ({ lists, calls }: RuleYieldProps) => {
  const words = useMessages().contact;
  const formatters = useFormatters();
  const { settings } = useSession();
  const yields = callYield(calls);
  const columns = words.ruleColumns;
  const called = yields.length > 0;
  const whole = (n: number | undefined): string => formatters.number(n ?? 0);
  return (
    <section className={styles.yield} aria-label={words.perRule}>
      <h2>{words.perRule}</h2>
      <div className={styles.scroll}>
        <table>
          <thead>
            <tr>
              <th scope="col">{columns.rule}</th>
              <th scope="col">{columns.checked}</th>
              <th scope="col">{columns.alone}</th>
              <th scope="col">{columns.listed}</th>
              {called ? (
                <>
                  <th scope="col">{columns.called}</th>
                  <th scope="col">{columns.confirmed}</th>
                  <th scope="col">{columns.explained}</th>
                  <th scope="col">{columns.notReached}</th>
                  <th scope="col">{columns.notUseful}</th>
                </>
              ) : null}
            </tr>
          </thead>
          <tbody>
            {lists.rules.map((rule) => {
              const own = yields.find((one) => one.rule === rule.rule);
              return (
                <tr key={rule.rule}>
                  <th scope="row">{words.rules[rule.rule]}</th>
                  <td>{whole(rule.checked)}</td>
                  <td>{rule.byErrorAlone === null ? words.notSaid : formatters.number(rule.byErrorAlone, 1)}</td>
                  <td>{whole(rule.listed)}</td>
                  {called ? (
                    <>
                      <td>{whole(own?.called)}</td>
                      {CALL_OUTCOMES.map((outcome) => (
                        <td key={outcome}>{whole(own?.outcomes[outcome])}</td>
                      ))}
                    </>
                  ) : null}
                </tr>
              );
            })}
          </tbody>
        </table>
      </div>
      {settings.leanShareLimitPercent === undefined && !settings.contacts.rulesOff.includes('lean-share') ? (
        <p className="quiet small">
          {words.shareNeedsLimit} <FilterLink href="/settings/#lean">{words.shareEnterLimit}</FilterLink>
        </p>
      ) : null}
      <p className="quiet small">{words.ruleNear({ percent: formatters.percent(settings.contacts.nearFactor) })}</p>
      <RuleRetuning yields={yields} rows={lists.talkTo} />
    </section>
  );
};
