'use client';

import type { Equation } from '../../../lib/measures/equation';
import { useMessages } from '../../_state/language-provider';
import type { FormulaSign } from './formula-signs';
import { quantitySign } from './formula-tree';
import styles from './methods-screen.module.css';

interface SignListProps {
  readonly signs: readonly FormulaSign[];
  /** Whose result stands before the equals sign. */
  readonly result?: Equation;
}

/** What the signs of a formula stand for, each with its unit. */
export const SignList = ({ signs, result }: SignListProps) => {
  const messages = useMessages();
  const all: readonly FormulaSign[] = [
    ...(result === undefined
      ? []
      : [{ sign: quantitySign(result), meaning: messages.methods.quantity[result.quantity], unit: result.unit }]),
    ...signs,
  ];
  if (all.length === 0) return null;
  return (
    <dl className={styles.signs} aria-label={messages.methodsEntries.signs}>
      {all.map(({ sign, meaning, unit }) => (
        <div key={sign}>
          <dt>{sign}</dt>
          <dd>{unit === '' ? meaning : `${meaning}, ${unit}`}</dd>
        </div>
      ))}
    </dl>
  );
};
