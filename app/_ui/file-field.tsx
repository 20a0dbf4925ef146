'use client';

import { useId } from 'react';
import styles from './labelled-select.module.css';

interface FileFieldProps {
  readonly label: string;
  readonly onFile: (file: File | undefined) => void;
  readonly disabled?: boolean;
}

/** One file from this machine. */
export const FileField = ({ label, onFile, disabled = false }: FileFieldProps) => {
  const id = useId();
  return (
    <div className={styles.field}>
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        type="file"
        disabled={disabled}
        onChange={(event) => {
          onFile(event.target.files?.[0]);
        }}
      />
    </div>
  );
};
