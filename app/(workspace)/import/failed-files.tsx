'use client';

import type { AppError } from '../../../lib/core/app-error';
import styles from './import-screen.module.css';

interface FailedFilesProps {
  readonly files: readonly { readonly name: string; readonly error: AppError }[];
}

/** Files that could not be read, each with what to do; the others go on without them. */
export const FailedFiles = ({ files }: FailedFilesProps) =>
  files.map(({ name, error }) => (
    <div key={name} role="alert" className={styles.wrong}>
      <p className="strong">
        <bdi>{error.message}</bdi>
      </p>
      <p>{error.remedy}</p>
    </div>
  ));
