'use client';

import { useId } from 'react';
import type { ImportPlan } from '../../../lib/import/plan';
import { useMessages } from '../../_state/language-provider';
import { useSession } from '../../_state/workspace-provider';
import styles from './import-screen.module.css';

interface CommitBarProps {
  readonly plan: ImportPlan;
  readonly clinicName: string;
  readonly onRename: (name: string) => void;
  readonly updating: boolean;
  readonly onCommit: () => void;
  readonly onDiscard: () => void;
}

/** The one button that keeps the files, what it does, and the way back. */
export const CommitBar = ({ plan, clinicName, onRename, updating, onCommit, onDiscard }: CommitBarProps) => {
  const words = useMessages().importScreen;
  const { clinic } = useSession();
  const nameId = useId();
  const nothing = plan.accepted === 0;
  return (
    <div className={`sheet ${styles.commit ?? ''}`}>
      {clinic.id === 'own' ? null : (
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
      )}
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
      <p className="quiet">
        {nothing ? words.commitNothing : words.commitNote({ demo: clinic.id === 'demo', held: plan.held })}
      </p>
    </div>
  );
};
