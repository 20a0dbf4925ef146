'use client';

import { useId, type ReactNode } from 'react';
import type { ImportPlan } from '../../../lib/import/plan';
import { useMessages } from '../../_state/language-provider';
import { useSession } from '../../_state/workspace-provider';
import styles from './import-screen.module.css';

interface CommitBarProps {
  readonly plan: ImportPlan;
  /** The files open a new clinic, which wants a name. */
  readonly isNew: boolean;
  readonly clinicName: string;
  readonly onRename: (name: string) => void;
  readonly updating: boolean;
  readonly onCommit: () => void;
  readonly onDiscard: () => void;
  readonly others: ReactNode;
}

/** The one button that keeps the files, what it does, and the way back. */
export const CommitBar = (props: CommitBarProps) => {
  const { plan, isNew, clinicName, onRename, updating, onCommit, onDiscard, others } = props;
  const words = useMessages().importScreen;
  const { clinic } = useSession();
  const nameId = useId();
  const nothing = plan.accepted === 0;
  return (
    <div className={`sheet ${styles.commit ?? ''}`}>
      {isNew ? (
        <div className={styles.initials}>
          <label htmlFor={nameId}>{words.clinicName}</label>
          <input
            id={nameId}
            value={clinicName}
            maxLength={80}
            disabled={updating}
            autoComplete="off"
            onChange={(event) => {
              onRename(event.target.value);
            }}
          />
        </div>
      ) : null}
      <button
        type="button"
        className={`button button-strong ${styles.big ?? ''}`}
        disabled={updating || nothing}
        onClick={onCommit}
      >
        {words.commit({ rows: plan.accepted })}
      </button>
      <button type="button" className="button" onClick={onDiscard}>
        {words.discard}
      </button>
      {others}
      <p className="quiet" role="status">
        {updating
          ? words.updating
          : nothing
            ? words.commitNothing
            : words.commitNote({ demo: clinic.kind === 'demo', held: plan.held })}
      </p>
    </div>
  );
};
