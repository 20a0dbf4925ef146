'use client';

import { useId } from 'react';
import styles from './segmented-choice.module.css';

interface SegmentedChoiceProps<Value extends string> {
  readonly label: string;
  readonly value: Value;
  readonly options: readonly { readonly value: Value; readonly label: string }[];
  readonly onChange: (value: Value) => void;
}

/** One of a few, all in sight: radio buttons drawn side by side. */
export const SegmentedChoice = <Value extends string>(props: SegmentedChoiceProps<Value>) => {
  const { label, value, options, onChange } = props;
  const name = useId();
  return (
    <fieldset className={styles.choice}>
      <legend className={styles.legend}>{label}</legend>
      {options.map((option) => (
        <label key={option.value} className={styles.option}>
          <input
            type="radio"
            name={name}
            value={option.value}
            checked={option.value === value}
            onChange={() => {
              onChange(option.value);
            }}
          />
          <span>{option.label}</span>
        </label>
      ))}
    </fieldset>
  );
};
