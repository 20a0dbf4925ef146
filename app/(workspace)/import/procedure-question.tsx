'use client';

import { useState, type ReactNode } from 'react';
import type { Procedure, Settings } from '../../../lib/cohort/settings';
import type { IsoDate } from '../../../lib/core/iso-date';
import type { ImportPlan } from '../../../lib/import/plan';
import { useFormatters, useMessages } from '../../_state/language-provider';
import styles from './import-screen.module.css';
import { missingConditions } from './missing-conditions';
import { ProcedureForm } from './procedure-form';

interface ProcedureQuestionProps {
  readonly plan: ImportPlan;
  readonly settings: Settings;
  readonly busy: boolean;
  readonly onSettings: (settings: Settings) => void;
}

/** Asked once where the files record no conditions: whether the clinic measures by a written procedure. */
export const ProcedureQuestion = ({ plan, settings, busy, onSettings }: ProcedureQuestionProps) => {
  const words = useMessages().importScreen.procedure;
  const f = useFormatters();
  const [without, setWithout] = useState(false);
  const missing = missingConditions(plan.files);
  const { procedures } = settings;
  if (missing.length === 0 && procedures.length === 0) return null;

  const answered = (lines: readonly string[], undo: (() => void) | undefined) => (
    <div className={styles.question}>
      {lines.map((line) => (
        <p key={line}>
          <bdi>{line}</bdi>
        </p>
      ))}
      {undo === undefined ? null : (
        <div className={styles.buttons}>
          <button type="button" className="button" disabled={busy} onClick={undo}>
            {words.change}
          </button>
        </div>
      )}
    </div>
  );
  const written = (procedure: Procedure): string =>
    words.declared({
      n: procedure.conditions.length,
      site: procedure.site,
      from: procedure.from === null ? null : f.date(procedure.from as IsoDate),
      to: procedure.to === null ? null : f.date(procedure.to as IsoDate),
      initials: procedure.initials,
    });
  // A procedure for one site or period was written in the settings with care; one button must not undo it.
  const undoable = procedures.every(({ site, from, to }) => site === null && from === null && to === null);
  const content = (): ReactNode => {
    if (procedures.length > 0)
      return answered(
        procedures.map(written),
        undoable
          ? () => {
              onSettings({ ...settings, procedures: [] });
            }
          : undefined,
      );
    if (without)
      return answered([words.withoutAnswered], () => {
        setWithout(false);
      });
    return (
      <div className={styles.question}>
        <p className={styles.asked}>{words.question}</p>
        <p>{words.missing({ columns: missing.map(({ column }) => column) })}</p>
        <p className="quiet">{words.explanation}</p>
        <ProcedureForm
          missing={missing}
          busy={busy}
          onDeclare={(procedure) => {
            onSettings({ ...settings, procedures: [procedure] });
          }}
          onWithout={() => {
            setWithout(true);
          }}
        />
      </div>
    );
  };
  return (
    <section className="sheet" aria-labelledby="procedure">
      <h2 id="procedure">{words.title}</h2>
      {content()}
    </section>
  );
};
