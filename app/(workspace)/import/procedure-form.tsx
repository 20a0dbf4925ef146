'use client';

import { useId, useState } from 'react';
import type { Procedure } from '../../../lib/cohort/settings';
import type { RuleId } from '../../../lib/measures/comparability-rule';
import { useMessages } from '../../_state/language-provider';
import styles from './import-screen.module.css';
import type { MissingCondition } from './missing-conditions';

interface ProcedureFormProps {
  readonly missing: readonly MissingCondition[];
  readonly busy: boolean;
  readonly onDeclare: (procedure: Procedure) => void;
  readonly onWithout: () => void;
}

/** The conditions that a written procedure requires, and who declares it. Nothing is ticked before a person ticks it. */
export const ProcedureForm = ({ missing, busy, onDeclare, onWithout }: ProcedureFormProps) => {
  const words = useMessages().importScreen.procedure;
  const [chosen, setChosen] = useState<readonly RuleId[]>([]);
  const [initials, setInitials] = useState('');
  const [wrong, setWrong] = useState<string | undefined>(undefined);
  const initialsId = useId();
  const wrongId = useId();
  const all = missing.map(({ rule }) => rule.id);
  const declare = (): void => {
    if (chosen.length === 0) setWrong(words.needsCondition);
    else if (initials.trim() === '') setWrong(words.needsInitials);
    else onDeclare({ site: null, from: null, to: null, conditions: [...chosen], initials: initials.trim() });
  };
  return (
    <form
      className={styles.question}
      onSubmit={(event) => {
        event.preventDefault();
        declare();
      }}
    >
      <fieldset className={styles.checks}>
        <legend>{words.conditionsLabel}</legend>
        <label className={styles.allChecks}>
          <input
            type="checkbox"
            checked={chosen.length === all.length}
            onChange={(event) => {
              setChosen(event.target.checked ? all : []);
            }}
          />
          {words.all}
        </label>
        {all.map((id) => (
          <label key={id}>
            <input
              type="checkbox"
              checked={chosen.includes(id)}
              onChange={(event) => {
                setChosen(all.filter((one) => (one === id ? event.target.checked : chosen.includes(one))));
              }}
            />
            {words.condition[id] ?? id}
          </label>
        ))}
      </fieldset>
      <div className={styles.initials}>
        <label htmlFor={initialsId}>{words.initials}</label>
        <input
          id={initialsId}
          value={initials}
          maxLength={12}
          autoComplete="off"
          aria-describedby={wrong === undefined ? undefined : wrongId}
          onChange={(event) => {
            setInitials(event.target.value);
          }}
        />
        <span className="quiet">{words.initialsNote}</span>
      </div>
      {wrong === undefined ? null : (
        <p id={wrongId} role="alert" className={styles.wrong}>
          {wrong}
        </p>
      )}
      <div className={styles.buttons}>
        <button type="submit" className="button button-strong" disabled={busy}>
          {words.declare}
        </button>
        <button type="button" className="button" disabled={busy} onClick={onWithout}>
          {words.without}
        </button>
      </div>
    </form>
  );
};
