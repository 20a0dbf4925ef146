'use client';

import { useMessages } from '../../_state/language-provider';
import { DoneStep } from './done-step';
import { FileZone } from './file-zone';
import { IdleStep } from './idle-step';
import { ImportProgress } from './import-progress';
import styles from './import-screen.module.css';
import { MappingStep } from './mapping-step';
import { PlannedStep } from './planned-step';
import { useImport } from './use-import';
import { StepHead } from './step-head';

/** Import: the file as it is, what was understood, the questions, and the button that keeps it. */
export const ImportScreen = () => {
  const words = useMessages().importScreen;
  const process = useImport();
  const { state, progress } = process;
  switch (state.kind) {
    case 'idle':
      return <IdleStep process={process} />;
    case 'reading':
      return (
        <ImportProgress
          title={words.heading[state.step]}
          detail={words.progress.files(state)}
          note={words.lead[state.step]}
          progress={progress}
          onCancel={process.cancel}
        />
      );
    case 'mapping':
      return <MappingStep work={state.work} error={state.error} busy={state.busy} process={process} />;
    case 'planned':
      return <PlannedStep state={state} process={process} />;
    case 'failed':
      return (
        <div className={styles.screen}>
          <StepHead overline={words.heading.failed} detail={words.lead.failed}>
            {state.error.message}
          </StepHead>
          <p className="measure" role="alert">
            {state.error.remedy}
          </p>
          <FileZone onFiles={(files) => void process.start(files)} />
        </div>
      );
    case 'keeping':
      return (
        <ImportProgress
          title={words.heading.keeping}
          detail={words.commit({ rows: state.rows })}
          note={words.lead.keeping}
          progress={progress}
          onCancel={process.stop}
        />
      );
    case 'done':
      return <DoneStep state={state} onMore={process.cancel} />;
  }
};
