'use client';

import { useId } from 'react';
import { useMessages } from '../../_state/language-provider';
import type { OwnField as OwnFieldName } from './own-draft';
import styles from './methods-screen.module.css';

interface OwnFieldProps {
  readonly label: string;
  readonly value: string;
  readonly onChange: (text: string) => void;
  /** Which problem belongs to it. */
  readonly field?: OwnFieldName;
  /** The problems that are shown. */
  readonly problems: ReadonlySet<OwnFieldName>;
  readonly hint?: string;
  readonly size?: 'short' | 'long';
  readonly inputMode?: 'text' | 'decimal' | 'numeric';
}

/** A field of the form; what is wrong with it stands under it. */
export const OwnField = ({ label, value, onChange, field, problems, hint, size, inputMode }: OwnFieldProps) => {
  const words = useMessages().methodsOwn;
  const id = useId();
  const problem = field !== undefined && problems.has(field) ? words.problem[field] : undefined;
  return (
    <div className={[styles.field, size === 'long' ? styles.long : '', size === 'short' ? styles.short : ''].join(' ')}>
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        type="text"
        autoComplete="off"
        inputMode={inputMode}
        maxLength={300}
        value={value}
        aria-invalid={problem !== undefined}
        aria-describedby={problem === undefined && hint === undefined ? undefined : `${id}-more`}
        onChange={(event) => {
          onChange(event.target.value);
        }}
      />
      {problem === undefined && hint === undefined ? null : (
        <p id={`${id}-more`} className={problem === undefined ? 'quiet small' : styles.problem}>
          {problem ?? hint}
        </p>
      )}
    </div>
  );
};
