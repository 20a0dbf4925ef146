'use client';

import { useId, type ReactNode } from 'react';
import styles from './fields.module.css';

interface RadioListProps<Value extends string> {
  readonly legend: string;
  readonly legendHidden?: boolean;
  readonly value: Value | undefined;
  readonly options: readonly { readonly value: Value; readonly label: ReactNode }[];
  readonly onChange: (value: Value) => void;
}

/** One of a few, one under the other, each with as many words as it needs. Nothing is chosen before a person chooses. */
export const RadioList = <Value extends string>(props: RadioListProps<Value>) => {
  const { legend, legendHidden = false, value, options, onChange } = props;
  const name = useId();
  return (
    <fieldset className={styles.radios}>
      <legend className={legendHidden ? 'visually-hidden' : 'quiet small'}>{legend}</legend>
      {options.map((option) => (
        <label key={option.value} className={styles.radio}>
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
