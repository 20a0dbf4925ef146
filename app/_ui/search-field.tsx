'use client';

import { useEffect, useId, useRef } from 'react';
import styles from './search-field.module.css';

interface SearchFieldProps {
  readonly label: string;
  readonly value: string;
  readonly onChange: (text: string) => void;
}

/** The search of a table; `/` leads to it. What is typed stays on the page and never enters the address. */
export const SearchField = ({ label, value, onChange }: SearchFieldProps) => {
  const id = useId();
  const field = useRef<HTMLInputElement>(null);
  useEffect(() => {
    const onKey = (event: KeyboardEvent): void => {
      const typing = event.target instanceof Element && event.target.matches('input, select, textarea');
      if (event.key !== '/' || typing) return;
      event.preventDefault();
      field.current?.focus();
    };
    window.addEventListener('keydown', onKey);
    return () => {
      window.removeEventListener('keydown', onKey);
    };
  }, []);
  return (
    <div className={styles.field}>
      <label htmlFor={id}>{label}</label>
      <input
        ref={field}
        id={id}
        type="search"
        autoComplete="off"
        spellCheck={false}
        value={value}
        onChange={(event) => {
          onChange(event.target.value);
        }}
      />
    </div>
  );
};
