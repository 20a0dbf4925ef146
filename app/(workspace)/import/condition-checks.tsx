'use client';

import type { RuleId } from '../../../lib/measures/comparability-rule';
import { useMessages } from '../../_state/language-provider';
import styles from './import-screen.module.css';

interface ConditionChecksProps {
  readonly offered: readonly RuleId[];
  readonly chosen: readonly RuleId[];
  readonly onChange: (chosen: readonly RuleId[]) => void;
}

/** The conditions that a written procedure requires, each a tick. */
export const ConditionChecks = ({ offered, chosen, onChange }: ConditionChecksProps) => {
  const words = useMessages().importScreen.procedure;
  return (
    <fieldset className={styles.checks}>
      <legend>{words.conditionsLabel}</legend>
      <label className={styles.allChecks}>
        <input
          type="checkbox"
          checked={offered.every((id) => chosen.includes(id))}
          onChange={(event) => {
            onChange(event.target.checked ? offered : []);
          }}
        />
        {words.all}
      </label>
      {offered.map((id) => (
        <label key={id}>
          <input
            type="checkbox"
            checked={chosen.includes(id)}
            onChange={(event) => {
              onChange(offered.filter((one) => (one === id ? event.target.checked : chosen.includes(one))));
            }}
          />
          {words.condition[id] ?? id}
        </label>
      ))}
    </fieldset>
  );
};
