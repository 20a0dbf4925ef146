'use client';

import { useEffect, useRef } from 'react';
import { declareProcedure, denyProcedure } from '../../../lib/workspace/procedure-answers';
import type { Settings } from '../../../lib/cohort/settings';
import type { ImportPlan } from '../../../lib/import/plan';
import { useFormatters, useMessages } from '../../_state/language-provider';
import { DeclaredProcedures } from './declared-procedures';
import styles from './import-screen.module.css';
import { conditionsOf } from './procedure-conditions';
import { ProcedureForm } from './procedure-form';

interface ConditionsSectionProps {
  readonly plan: ImportPlan;
  readonly settings: Settings;
  readonly busy: boolean;
  /** `by`: initials that were given with the answer. */
  readonly onSettings: (settings: Settings, by?: string) => void;
}

/** Every site that a question or an answer names. */
const sitesOf = (plan: ImportPlan, { procedures, withoutProcedure }: Settings): readonly string[] => {
  const named = [...plan.missingConditions, ...procedures, ...withoutProcedure].flatMap(({ site }) => site ?? []);
  return [...new Set(named)].toSorted();
};

/** Asked once for each site whose files record no conditions: whether the clinic measures by a written procedure. */
export const ConditionsSection = ({ plan, settings, busy, onSettings }: ConditionsSectionProps) => {
  const words = useMessages().importScreen.procedure;
  const f = useFormatters();
  const heading = useRef<HTMLHeadingElement>(null);
  const missing = plan.missingConditions.filter(({ columns }) => conditionsOf(columns).length > 0);
  const open = missing.filter(({ declaredBy }) => declaredBy === null);
  const [present] = open;
  const presentKey =
    present === undefined ? undefined : JSON.stringify([present.site, present.from, present.to, present.columns]);
  const before = useRef(presentKey);
  useEffect(() => {
    if (before.current !== undefined && before.current !== presentKey) heading.current?.focus();
    before.current = presentKey;
  }, [presentKey]);
  const sites = sitesOf(plan, settings);
  const { procedures, withoutProcedure } = settings;
  if (present === undefined && procedures.length === 0 && withoutProcedure.length === 0) return null;
  const others = new Set(open.map(({ site }) => site)).size - 1;
  return (
    <section className="sheet" aria-labelledby="procedure">
      <h2 id="procedure" ref={heading} tabIndex={-1}>
        {words.title}
      </h2>
      {present === undefined ? null : (
        <div className={styles.question}>
          <p id="procedure-question" className={styles.asked}>
            <bdi>{words.question({ site: present.site })}</bdi>
          </p>
          <p>
            {words.missing({
              columns: present.columns,
              visits: present.visits,
              from: f.date(present.from),
              to: f.date(present.to),
            })}
          </p>
          <p className="quiet">{words.explanation}</p>
          <ProcedureForm
            key={presentKey}
            labelledBy="procedure-question"
            offered={conditionsOf(present.columns)}
            sites={sites}
            initial={{ site: present.site, from: present.from, to: present.to, conditions: [] }}
            busy={busy}
            submit={words.declare}
            onDeclare={(procedure) => {
              onSettings(declareProcedure(settings, procedure), procedure.initials);
            }}
            others={
              <button
                type="button"
                className="button"
                disabled={busy}
                onClick={() => {
                  onSettings(denyProcedure(settings, present));
                }}
              >
                {words.without}
              </button>
            }
          />
          {others < 1 ? null : <p className="quiet small">{words.more({ n: others })}</p>}
        </div>
      )}
      <DeclaredProcedures settings={settings} missing={missing} sites={sites} busy={busy} onSettings={onSettings} />
    </section>
  );
};
