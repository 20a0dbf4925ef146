'use client';

import { useId, useState } from 'react';
import styles from './labelled-select.module.css';

interface AgeFieldProps {
  readonly label: string;
  /** Completed years. */
  readonly value: number | undefined;
  readonly onChange: (age: number | null) => void;
}

/** A whole age, taken over when the field is left or Enter is pressed, so that half a number never filters. */
export const AgeField = ({ label, value, onChange }: AgeFieldProps) => {
  const id = useId();
  const [draft, setDraft] = useState<string | undefined>(undefined);
  const shown = draft ?? (value === undefined ? '' : String(value));
  const take = (): void => {
    if (draft === undefined) return;
    const age = Number(draft);
    onChange(draft.trim() !== '' && Number.isInteger(age) && age >= 0 && age <= 120 ? age : null);
    setDraft(undefined);
  };
  return (
    <div className={`${styles.field ?? ''} ${styles.age ?? ''}`}>
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        inputMode="numeric"
        autoComplete="off"
        value={shown}
        onChange={(event) => {
          setDraft(event.target.value);
        }}
        onBlur={take}
        onKeyDown={(event) => {
          if (event.key === 'Enter') take();
        }}
      />
    </div>
  );
};
