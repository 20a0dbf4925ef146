'use client';

import { useId } from 'react';
import styles from './labelled-select.module.css';

interface LabelledInputProps {
  readonly label: string;
  readonly type: 'text' | 'date';
  readonly value: string;
  readonly onChange: (text: string) => void;
  readonly maxLength?: number;
  /** Which keyboard a touch screen shows. */
  readonly inputMode?: 'text' | 'numeric' | 'decimal';
}

/** A field with its label above. */
export const LabelledInput = ({ label, type, value, onChange, maxLength, inputMode }: LabelledInputProps) => {
  const id = useId();
  return (
    <div className={styles.field}>
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        type={type}
        autoComplete="off"
        maxLength={maxLength}
        inputMode={inputMode}
        value={value}
        onChange={(event) => {
          onChange(event.target.value);
        }}
      />
    </div>
  );
};
