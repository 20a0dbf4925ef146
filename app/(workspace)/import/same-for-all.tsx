'use client';

import styles from './mapping-step.module.css';

interface SameForAllProps {
  readonly label: string;
  readonly checked: boolean;
  readonly onChange: (checked: boolean) => void;
}

/** Whether an answer also counts for the table's other columns that leave the same open. */
export const SameForAll = ({ label, checked, onChange }: SameForAllProps) => (
  <label className={styles.use}>
    <input
      type="checkbox"
      checked={checked}
      onChange={(event) => {
        onChange(event.target.checked);
      }}
    />
    {label}
  </label>
);
