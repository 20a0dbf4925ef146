'use client';

import { useFormatters, useMessages } from '../../_state/language-provider';
import { useSession } from '../../_state/workspace-provider';
import { FilterLink } from '../../_ui/filter-link';
import { Sentence } from '../../_ui/sentence';
import { Loading } from '../../_ui/states';
import { ClinicSwitch } from './clinic-switch';
import { CommitBar } from './commit-bar';
import { FileZone } from './file-zone';
import { openQuestions } from './open-questions';
import styles from './import-screen.module.css';
import { OpenClinicReview } from './open-clinic-review';
import { PlanReview } from './plan-review';
import { useImport } from './use-import';

const BYTES_PER_KILOBYTE = 1000;

/** Import: the file as it is, what was understood, the questions, and the button that keeps it. */
export const ImportScreen = () => {
  const words = useMessages().importScreen;
  const session = useSession();
  const f = useFormatters();
  const { state, start, change, rename, commit, cancel } = useImport();
  const zone = <FileZone onFiles={(files) => void start(files)} />;
  switch (state.kind) {
    case 'idle':
      return (
        <div className={styles.screen}>
          <Sentence detail={words.lead.idle}>{words.heading.idle}</Sentence>
          {zone}
          <ClinicSwitch />
          <OpenClinicReview />
        </div>
      );
    case 'reading':
      return (
        <Loading
          heading
          title={words.heading.reading}
          detail={words.progress({ files: state.files, kilobytes: Math.ceil(state.bytes / BYTES_PER_KILOBYTE) })}
          later={words.lead.reading}
          onCancel={cancel}
        />
      );
    case 'planned': {
      const { plan, settings, updating } = state;
      const questions = openQuestions(plan.findings, settings).length;
      const bar = (
        <CommitBar
          plan={plan}
          clinicName={settings.clinic.name}
          onRename={rename}
          updating={updating}
          onCommit={() => void commit()}
          onDiscard={cancel}
        />
      );
      return (
        <div className={styles.screen}>
          <Sentence detail={words.lead.planned}>
            {words.heading.planned({ accepted: plan.accepted, rows: plan.rows, questions })}
          </Sentence>
          {bar}
          <PlanReview
            plan={plan}
            settings={settings}
            countsTitle={words.counts.planned}
            filesTitle={words.files.title}
            updating={updating}
            onSettings={(next) => void change(next)}
          />
        </div>
      );
    }
    case 'failed':
      return (
        <div className={styles.screen}>
          <Sentence overline={words.heading.failed} detail={words.lead.failed}>
            {state.error.message}
          </Sentence>
          <p className="measure" role="alert">
            {state.error.remedy}
          </p>
          {zone}
        </div>
      );
    case 'keeping':
      return (
        <Loading
          heading
          title={words.heading.keeping}
          detail={words.commit({ rows: state.rows })}
          later={words.lead.keeping}
        />
      );
    case 'done':
      return (
        <div className={styles.screen}>
          <Sentence detail={words.lead.done}>{words.heading.done({ clinic: session.clinic.name })}</Sentence>
          <div className="sheet stack">
            <p role="status">{words.done.imported({ rows: state.rows, files: state.files })}</p>
            <p>
              {session.waiting === 0 ? null : words.done.waiting({ n: session.waiting })}{' '}
              {words.done.data({ version: session.dataVersion, asOf: f.date(session.cohort.summary.asOf) })}
            </p>
            <div className={styles.buttons}>
              <FilterLink className={`button button-strong ${styles.big ?? ''}`} href="/">
                {words.done.toFirst}
              </FilterLink>
              <button type="button" className={`button ${styles.big ?? ''}`} onClick={cancel}>
                {words.done.more}
              </button>
            </div>
          </div>
        </div>
      );
  }
};
