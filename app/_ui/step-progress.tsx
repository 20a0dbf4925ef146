'use client';

import type { Progress } from '../../lib/core/progress';
import { useMessages } from '../_state/language-provider';
import styles from './step-progress.module.css';

/** Steps whose file is one that a person gave; the others go over files under names of their own. */
const NAMES_FILES: ReadonlySet<Progress['step']> = new Set(['reading', 'hashing', 'judging', 'keeping']);

interface StepProgressProps {
  readonly progress: Progress | null;
  /** Said before the step has said anything. */
  readonly waiting: string;
}

/** How far a long step is: a bar, and in words what happens, to which file, in bytes and rows. */
export const StepProgress = ({ progress, waiting }: StepProgressProps) => {
  const words = useMessages().importScreen.progress;
  // All bytes are read before the judging begins: what is left of it is not counted in bytes.
  const counted = progress !== null && progress.step !== 'judging';
  const total = counted ? progress.totalBytes : null;
  return (
    <>
      <progress
        className={styles.bar}
        aria-label={words.label}
        max={total === null ? undefined : Math.max(1, total)}
        value={total === null ? undefined : progress?.bytes}
      />
      <p className={styles.now}>
        {progress === null ? (
          waiting
        ) : (
          <>
            {words.step[progress.step]} {NAMES_FILES.has(progress.step) ? <bdi>{progress.file}</bdi> : null}
            {!counted || progress.bytes === 0 ? null : ` · ${words.bytes({ done: progress.bytes, total })}`}
            {progress.rows === 0 ? null : ` · ${words.rows({ rows: progress.rows })}`}
          </>
        )}
      </p>
    </>
  );
};
