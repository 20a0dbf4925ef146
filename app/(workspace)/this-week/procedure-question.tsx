'use client';

import { useId, useState } from 'react';
import { declareProcedure } from '../../../lib/cohort/procedure-answers';
import type { Procedure } from '../../../lib/cohort/settings';
import type { AppError } from '../../../lib/core/app-error';
import { useMessages } from '../../_state/language-provider';
import { useSession, useWorkspace } from '../../_state/workspace-provider';
import { Failing } from '../../_ui/states';
import { PROCEDURE_CONDITIONS } from '../import/procedure-conditions';
import { ProcedureForm } from '../import/procedure-form';
import styles from './procedure-question.module.css';

/** The one question that files without condition columns leave open: is there a written procedure? */
export const ProcedureQuestion = () => {
  const words = useMessages().thisWeek.question;
  const importWords = useMessages().importScreen.procedure;
  const { settings, cohort } = useSession();
  const { sites, firstVisit, asOf } = cohort.summary;
  const { run } = useWorkspace();
  const id = useId();
  const [error, setError] = useState<AppError | undefined>(undefined);
  const [saving, setSaving] = useState(false);
  if (settings.withoutProcedure.length > 0) return null;

  const save = async (next: typeof settings, initials: string): Promise<void> => {
    setSaving(true);
    setError(undefined);
    const wrong = await run((workspace) => {
      if (initials !== '') workspace.setInitials(initials);
      return workspace.saveSettings(next);
    });
    setError(wrong);
    setSaving(false);
  };
  const declare = (procedure: Procedure): void => {
    void save(declareProcedure(settings, procedure), procedure.initials);
  };
  return (
    <section className={`sheet no-print ${styles.question ?? ''}`} aria-labelledby={id}>
      <div>
        <h2 id={id}>{words.title}</h2>
        <p className={styles.why}>{words.why}</p>
      </div>
      <ProcedureForm
        labelledBy={id}
        offered={PROCEDURE_CONDITIONS}
        sites={sites}
        initial={{ site: null, from: firstVisit, to: asOf, conditions: [] }}
        busy={saving}
        submit={saving ? words.declaring : words.declare}
        onDeclare={declare}
        others={
          <button
            type="button"
            className="button"
            disabled={saving}
            onClick={() => {
              const withoutProcedure = [null, ...sites].map((site) => ({ site, from: null, to: null }));
              void save({ ...settings, withoutProcedure }, '');
            }}
          >
            {importWords.without}
          </button>
        }
      />
      {error === undefined ? null : <Failing error={error} />}
      <p className="quiet small">{words.otherwise}</p>
    </section>
  );
};
