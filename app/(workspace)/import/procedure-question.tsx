'use client';

import { useState } from 'react';
import type { Settings } from '../../../lib/cohort/settings';
import type { ImportPlan } from '../../../lib/import/plan';
import { useMessages } from '../../_state/language-provider';
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
  const [without, setWithout] = useState(false);
  const missing = missingConditions(plan.files);
  const [declared] = settings.procedures;
  if (missing.length === 0 && declared === undefined) return null;

  const change = (text: string, undo: () => void) => (
    <div className={styles.question}>
      <p>{text}</p>
      <div className={styles.buttons}>
        <button type="button" className="button" disabled={busy} onClick={undo}>
          {words.change}
        </button>
      </div>
    </div>
  );
  const content = (): React.ReactNode => {
    if (declared !== undefined)
      return change(words.declared({ n: declared.conditions.length, initials: declared.initials }), () => {
        onSettings({ ...settings, procedures: [] });
      });
    if (without)
      return change(words.withoutAnswered, () => {
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
