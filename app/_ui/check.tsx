'use client';

import styles from './check.module.css';

interface CheckProps {
  readonly label: string;
  readonly checked: boolean;
  readonly onChange: (checked: boolean) => void;
}

/** A box to tick, with its label behind it. */
export const Check = ({ label, checked, onChange }: CheckProps) => (
  <label className={styles.check}>
    <input
      type="checkbox"
      checked={checked}
      onChange={(event) => {
        onChange(event.target.checked);
      }}
    />{' '}
    {label}
  </label>
);
