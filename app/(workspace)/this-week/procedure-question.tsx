'use client';

import { useId } from 'react';
import { declareProcedure } from '../../../lib/workspace/procedure-answers';
import type { Procedure } from '../../../lib/cohort/settings';
import { useMessages } from '../../_state/language-provider';
import { useActing } from '../../_state/use-acting';
import { useSession } from '../../_state/workspace-provider';
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
  const { busy, error, start } = useActing();
  const id = useId();
  if (settings.withoutProcedure.length > 0) return null;

  const save = (next: typeof settings, initials?: string): void =>
    void start((workspace) => workspace.saveSettings(next), undefined, initials);
  const declare = (procedure: Procedure): void => {
    save(declareProcedure(settings, procedure), procedure.initials);
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
        busy={busy}
        submit={busy ? words.declaring : words.declare}
        onDeclare={declare}
        others={
          <button
            type="button"
            className="button"
            disabled={busy}
            onClick={() => {
              const withoutProcedure = [null, ...sites].map((site) => ({ site, from: null, to: null }));
              save({ ...settings, withoutProcedure });
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
