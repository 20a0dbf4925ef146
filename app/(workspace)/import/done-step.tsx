'use client';

import { useState } from 'react';
import { useFormatters, useMessages } from '../../_state/language-provider';
import { useActing } from '../../_state/use-acting';
import { useSession } from '../../_state/workspace-provider';
import { FilterLink } from '../../_ui/filter-link';
import { Failing } from '../../_ui/states';
import { ImportChanges } from './import-changes';
import type { ImportState } from './import-state';
import styles from './import-screen.module.css';
import { showQuestions } from './show-questions';
import { StepHead } from './step-head';

interface DoneStepProps {
  readonly state: Extract<ImportState, { readonly kind: 'done' }>;
  readonly onMore: () => void;
}

/** What was kept, what it changed, and the way back. */
export const DoneStep = ({ state, onMore }: DoneStepProps) => {
  const words = useMessages().importScreen;
  const f = useFormatters();
  const session = useSession();
  const { busy, error, start } = useActing();
  const [undone, setUndone] = useState(false);
  const { importId } = state;
  const undo = async (): Promise<void> => {
    if (importId === null) return;
    setUndone(await start((workspace) => workspace.removeImport(importId)));
  };
  return (
    <div className={styles.screen}>
      <StepHead detail={undone ? words.done.undone : words.lead.done}>
        {words.heading.done({ clinic: session.clinic.name })}
      </StepHead>
      <div className="sheet stack">
        <p role="status">
          {undone
            ? words.done.undone
            : importId === null
              ? words.done.nothingAdded
              : words.done.imported({ rows: state.rows, files: state.files, held: state.held })}
        </p>
        {session.waiting === 0 ? null : (
          <p>
            {words.done.waiting({ n: session.waiting })}{' '}
            <button
              type="button"
              className={styles.inText}
              onClick={() => {
                onMore();
                // The questions are drawn by then.
                setTimeout(showQuestions);
              }}
            >
              {words.done.answer}
            </button>
          </p>
        )}
        {session.keeping.changesSinceBackup === 0 ? null : (
          <p>
            {words.done.notBackedUp} <FilterLink href="/settings/#keeping">{words.done.backUp}</FilterLink>
          </p>
        )}
        <p className="quiet">
          {words.done.data({ version: session.dataVersion, asOf: f.date(session.cohort.summary.asOf) })}
        </p>
        <div className={styles.buttons}>
          <FilterLink className={`button button-strong ${styles.big ?? ''}`} href="/">
            {words.done.toFirst}
          </FilterLink>
          <button type="button" className={`button ${styles.big ?? ''}`} onClick={onMore}>
            {words.done.more}
          </button>
          {importId === null || undone ? null : (
            <button type="button" className={`button ${styles.big ?? ''}`} disabled={busy} onClick={() => void undo()}>
              {words.done.undo}
            </button>
          )}
        </div>
        {error === undefined ? null : <Failing error={error} />}
      </div>
      {undone || state.difference === null ? null : <ImportChanges difference={state.difference} />}
    </div>
  );
};
