'use client';

import { useId } from 'react';
import styles from './fields.module.css';

interface RowSelectProps<Value extends string> {
  /** Shown above the field. */
  readonly label: string;
  /** What completes the label for those who hear it: whose field it is. */
  readonly name: string;
  readonly value: Value;
  readonly options: readonly { readonly value: Value; readonly label: string }[];
  readonly disabled?: boolean;
  readonly onChange: (value: Value) => void;
}

/** A native select in a row of many: a short label in sight, the whole one for a screen reader. */
export const RowSelect = <Value extends string>(props: RowSelectProps<Value>) => {
  const { label, name, value, options, disabled = false, onChange } = props;
  const id = useId();
  return (
    <div className={styles.field}>
      <span className={styles.label} aria-hidden="true">
        {label}
      </span>
      <label htmlFor={id} className="visually-hidden">
        {name}
      </label>
      <select
        id={id}
        value={value}
        disabled={disabled}
        onChange={(event) => {
          const chosen = options.find((option) => option.value === event.target.value);
          if (chosen !== undefined) onChange(chosen.value);
        }}
      >
        {options.map((option) => (
          <option key={option.value} value={option.value}>
            {option.label}
          </option>
        ))}
      </select>
    </div>
  );
};
