'use client';

import type { Progress } from '../../../lib/core/progress';
import { useMessages } from '../../_state/language-provider';
import { Sentence } from '../../_ui/sentence';
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
  const total = progress?.totalBytes ?? null;
  return (
    <div className={styles.progress}>
      <div role="status">
        <Sentence detail={detail}>{title}</Sentence>
      </div>
      <progress
        className={styles.bar}
        aria-label={words.label}
        max={total === null ? undefined : Math.max(1, total)}
        value={total === null ? undefined : progress?.bytes}
      />
      <p className={styles.now}>
        {progress === null ? (
          '\u00A0'
        ) : (
          <>
            {words.step[progress.step]} <bdi>{progress.file}</bdi>
            {progress.bytes === 0 ? null : ` · ${words.bytes({ done: progress.bytes, total })}`}
            {progress.rows === 0 ? null : ` · ${words.rows({ rows: progress.rows })}`}
          </>
        )}
      </p>
      <p className="quiet">{note}</p>
      <button type="button" className="button" onClick={onCancel}>
        {words.cancel}
      </button>
    </div>
  );
};
