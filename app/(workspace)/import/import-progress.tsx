'use client';

import type { Progress } from '../../../lib/core/progress';
import { useMessages } from '../../_state/language-provider';
import { Sentence } from '../../_ui/sentence';
import { StepProgress } from '../../_ui/step-progress';
import styles from './import-progress.module.css';

interface ImportProgressProps {
  readonly title: string;
  readonly detail: string;
  readonly note: string;
  readonly progress: Progress | null;
  readonly onCancel: () => void;
}

/** How far a long step is, in bytes and rows, and the way out of it. */
export const ImportProgress = ({ title, detail, note, progress, onCancel }: ImportProgressProps) => {
  const words = useMessages().importScreen.progress;
  return (
    <div className={styles.progress}>
      <div role="status">
        <Sentence detail={detail}>{title}</Sentence>
      </div>
      <StepProgress progress={progress} waiting={words.starting} />
      <p className="quiet">{note}</p>
      <button type="button" className="button" onClick={onCancel}>
        {words.cancel}
      </button>
    </div>
  );
};
