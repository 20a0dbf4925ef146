'use client';

import { useState, type FormEvent } from 'react';
import { enteredActivityLevel } from '../../../lib/workspace/client-marks';
import { useMessages } from '../../_state/language-provider';
import type { Acting } from '../../_state/use-acting';
import { useSession } from '../../_state/workspace-provider';
import { LabelledInput } from '../../_ui/labelled-input';
import styles from './client-own.module.css';

interface ActivityFieldProps {
  readonly client: string;
  readonly kept: string;
  readonly acting: Acting;
}

/** The physical activity level as a number; empty goes back to the record. */
export const ActivityField = ({ client, kept, acting }: ActivityFieldProps) => {
  const messages = useMessages();
  const words = messages.clientOwn.energy;
  const { keeping } = useSession();
  const [text, setText] = useState(kept);
  const [problem, setProblem] = useState<string | undefined>(undefined);
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    const level = enteredActivityLevel(text);
    const invalid = text.trim() !== '' && level === undefined;
    setProblem(invalid ? words.levelInvalid : undefined);
    if (invalid) return;
    const value = level === undefined ? '' : String(level);
    void acting.start((workspace) => workspace.writeMark(client, 'activity-level', value), messages.clientOwn.saved);
  };
  return (
    <form className={styles.field} onSubmit={submit}>
      <LabelledInput
        label={words.level}
        type="text"
        inputMode="decimal"
        maxLength={5}
        value={text}
        onChange={setText}
      />
      <button
        type="submit"
        className="button"
        aria-label={`${messages.clientOwn.save}: ${words.level}`}
        disabled={acting.busy || !keeping.writer || text.trim() === kept}
      >
        {messages.clientOwn.save}
      </button>
      <p className="small" role="alert">
        {problem}
      </p>
    </form>
  );
};
