'use client';

import type { ImportPlan } from '../../../lib/import/plan';
import { useFormatters, useMessages } from '../../_state/language-provider';
import styles from './import-screen.module.css';

interface PlanCountsProps {
  readonly plan: ImportPlan;
  readonly title: string;
  readonly updating: boolean;
}

/** What becomes of the rows, as n of N. */
export const PlanCounts = ({ plan, title, updating }: PlanCountsProps) => {
  const words = useMessages().importScreen;
  const f = useFormatters();
  const counts = [
    { name: words.counts.accepted, n: plan.accepted },
    { name: words.counts.held, n: plan.held },
    { name: words.counts.refused, n: plan.refused },
    { name: words.counts.duplicates, n: plan.duplicates },
  ];
  return (
    <section
      className={`sheet stack ${updating ? (styles.updating ?? '') : ''}`}
      aria-labelledby="plan-counts"
      aria-busy={updating}
    >
      <h2 id="plan-counts">{title}</h2>
      <dl className={styles.counts} aria-live="polite">
        {counts.map(({ name, n }) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{words.counts.of({ n, of: plan.rows })}</dd>
          </div>
        ))}
        <div>
          <dt>{words.counts.warnings}</dt>
          <dd>
            {f.number(plan.warnings)} <span className={styles.remark}>{words.counts.warningsNote}</span>
          </dd>
        </div>
      </dl>
      {plan.firstVisit === null || plan.lastVisit === null ? null : (
        <p>{words.period({ clients: plan.clients, first: f.date(plan.firstVisit), last: f.date(plan.lastVisit) })}</p>
      )}
    </section>
  );
};
