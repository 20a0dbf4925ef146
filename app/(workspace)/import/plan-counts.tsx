'use client';

import type { ImportPlan } from '../../../lib/import/plan';
import { useFormatters, useMessages } from '../../_state/language-provider';
import styles from './import-screen.module.css';

/** What becomes of the rows, as n of N. */
export const PlanCounts = ({ plan, updating }: { readonly plan: ImportPlan; readonly updating: boolean }) => {
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
      aria-label={words.counts.label}
      aria-busy={updating}
    >
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
