'use client';

import { useId } from 'react';
import type { MappingTarget } from '../../../lib/workspace/mapping-targets';
import { useMessages } from '../../_state/language-provider';
import fields from './fields.module.css';
import { RowSelect } from './row-select';

interface ConstantFieldProps {
  readonly target: MappingTarget;
  readonly name: string;
  readonly value: string;
  readonly onChange: (to: string, value: string) => void;
}

/** One value for every row of a file that has no such column: one device, one program. */
export const ConstantField = ({ target, name, value, onChange }: ConstantFieldProps) => {
  const words = useMessages().importScreen.mapping;
  const id = useId();
  const label = words.targets.constant({ target: name });
  const change = (text: string): void => {
    onChange(target.name, text);
  };
  if (target.choices !== null)
    return (
      <RowSelect
        label={words.targets.constantShort}
        name={label}
        value={value}
        options={['', ...target.choices].map((word) => ({
          value: word,
          label: words.canonicalWord[word] ?? word,
        }))}
        onChange={change}
      />
    );
  return (
    <div className={fields.field}>
      <span className={fields.label} aria-hidden="true">
        {words.targets.constantShort}
        {target.unit === null || target.unit === '1' ? '' : `, ${target.unit}`}
      </span>
      <label htmlFor={id} className="visually-hidden">
        {label}
      </label>
      <input
        id={id}
        type={target.type === 'date' ? 'date' : target.type === 'time' ? 'time' : 'text'}
        autoComplete="off"
        maxLength={120}
        placeholder={words.targets.constantHint}
        value={value}
        onChange={(event) => {
          change(event.target.value);
        }}
      />
    </div>
  );
};
