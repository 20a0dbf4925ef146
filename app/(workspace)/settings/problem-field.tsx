'use client';

import { useId } from 'react';
import styles from './program-form.module.css';

interface ProblemFieldProps {
  readonly label: string;
  readonly value: string;
  readonly onChange: (value: string) => void;
  readonly hint?: string;
  /** What is wrong with it, or has to be known. */
  readonly problems?: readonly string[];
  /** Whether it cannot be kept like this. */
  readonly invalid?: boolean;
  readonly maxLength?: number;
}

/** A text field with its hint and, beside it, what is wrong. */
export const ProblemField = (props: ProblemFieldProps) => {
  const { label, value, onChange, hint, problems = [], invalid = false, maxLength = 200 } = props;
  const id = useId();
  return (
    <div className={styles.field}>
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        type="text"
        autoComplete="off"
        maxLength={maxLength}
        value={value}
        aria-invalid={invalid}
        aria-describedby={`${id}-hint ${id}-wrong`}
        onChange={(event) => {
          onChange(event.target.value);
        }}
      />
      <span id={`${id}-hint`} className="quiet small">
        {hint}
      </span>
      <span id={`${id}-wrong`} className={styles.wrong} role={invalid ? 'alert' : undefined}>
        {problems.join(' ')}
      </span>
    </div>
  );
};
