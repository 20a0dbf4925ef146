'use client';

import { useMessages } from '../../_state/language-provider';
import { useSession } from '../../_state/workspace-provider';
import { CommitBar } from './commit-bar';
import { FailedFiles } from './failed-files';
import type { ImportState } from './import-state';
import styles from './import-screen.module.css';
import { IntoClinic } from './into-clinic';
import { PlanReview } from './plan-review';
import { openQuestions } from './stack-questions';
import type { Import } from './use-import';
import { usePlanned } from './use-planned';
import { StepHead } from './step-head';

interface PlannedStepProps {
  readonly state: Extract<ImportState, { readonly kind: 'planned' }>;
  readonly process: Import;
}

/** What would happen, what is asked, and the button that keeps exactly that. */
export const PlannedStep = ({ state, process }: PlannedStepProps) => {
  const words = useMessages().importScreen;
  const { change, rename, commit } = usePlanned(process);
  const { clinic } = useSession();
  const { plan, work, updating, error } = state;
  const { settings } = work;
  const questions = openQuestions(plan, settings).length;
  return (
    <div className={styles.screen}>
      <StepHead detail={words.lead.planned}>
        {words.heading.planned({ accepted: plan.accepted, rows: plan.rows, questions })}
      </StepHead>
      {error === undefined ? null : <FailedFiles files={[{ name: '', error }]} />}
      <CommitBar
        plan={plan}
        isNew={work.into === 'new'}
        clinicName={settings.clinic.name}
        onRename={rename}
        updating={updating}
        onCommit={() => void commit()}
        onDiscard={process.cancel}
        others={
          <>
            <button
              type="button"
              className="button"
              onClick={() => {
                process.stop();
                process.showMapping(work);
              }}
            >
              {words.columnsRead}
            </button>
            <IntoClinic work={work} disabled={updating} onInto={(into) => void process.changeInto(work, into)} />
          </>
        }
      />
      <PlanReview
        plan={plan}
        settings={settings}
        countsTitle={words.counts.planned}
        filesTitle={words.files.title}
        updating={updating}
        ofOpenClinic={work.into === clinic.id}
        asksError
        onSettings={(next) => void change(next)}
      />
    </div>
  );
};
