'use client';

import { useId } from 'react';
import type { Equation } from '../../../lib/measures/equation';
import type { MethodChoice } from '../../../lib/workspace/method-choices';
import { useMessages } from '../../_state/language-provider';
import styles from './methods-screen.module.css';

interface EquationSelectProps {
  readonly choice: MethodChoice;
  readonly switchedOn: readonly string[];
  readonly onChoose: (id: string | null) => void;
}

const NONE = '';

/** The equations of one quantity, those that may not be chosen in sight but out of use. */
export const EquationSelect = ({ choice, switchedOn, onChoose }: EquationSelectProps) => {
  const { inForce: words, quantity } = useMessages().methods;
  const id = useId();
  const group = (label: string, equations: readonly Equation[], isOffered: (equation: Equation) => boolean) =>
    equations.length === 0 ? null : (
      <optgroup label={label}>
        {equations.map((equation) => (
          <option key={equation.id} value={equation.id} disabled={!isOffered(equation)}>
            {equation.name}
          </option>
        ))}
      </optgroup>
    );
  return (
    <div className={styles.select}>
      <label htmlFor={id}>{words.equation({ quantity: quantity[choice.quantity] })}</label>
      <select
        id={id}
        value={choice.chosen?.id ?? NONE}
        onChange={(event) => {
          onChoose(event.target.value === NONE ? null : event.target.value);
        }}
      >
        {choice.optional ? <option value={NONE}>{words.none}</option> : null}
        {group(words.read, choice.read, () => true)}
        {group(words.own, choice.own, () => true)}
        {group(words.fromMemory, choice.fromMemory, (equation) => switchedOn.includes(equation.id))}
        {group(words.otherPath, choice.otherPath, () => false)}
      </select>
    </div>
  );
};
