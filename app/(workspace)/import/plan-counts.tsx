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
    { name: words.counts.setAside, n: plan.setAside },
    { name: words.counts.erased, n: plan.erased },
  ].filter(({ n }, index) => index === 0 || n > 0);
  const remarks = [
    { name: words.counts.warnings, n: plan.warnings, note: words.counts.warningsNote },
    { name: words.counts.corrected, n: plan.corrected, note: '' },
    { name: words.counts.enrolments, n: plan.enrolments, note: '' },
  ].filter(({ n }) => n > 0);
  const keptRows = plan.files.reduce((sum, { isNew, rows }) => sum + (isNew ? 0 : rows), 0);
  const comes = plan.files.some(({ isNew }) => isNew);
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
        {remarks.map(({ name, n, note }) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>
              {f.number(n)} <span className={styles.remark}>{note}</span>
            </dd>
          </div>
        ))}
      </dl>
      {keptRows === 0 || !comes ? null : <p className="quiet">{words.counts.withKept({ rows: keptRows })}</p>}
      {plan.firstVisit === null || plan.lastVisit === null ? null : (
        <p>{words.period({ clients: plan.clients, first: f.date(plan.firstVisit), last: f.date(plan.lastVisit) })}</p>
      )}
    </section>
  );
};
