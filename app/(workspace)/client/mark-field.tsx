'use client';

import { useState, type FormEvent } from 'react';
import type { ClientMarkKind } from '../../../lib/workspace/client-marks';
import { useMessages } from '../../_state/language-provider';
import type { Acting } from '../../_state/use-acting';
import { LabelledInput } from '../../_ui/labelled-input';
import styles from './client-own.module.css';
import { useSession } from '../../_state/workspace-provider';

interface MarkFieldProps {
  readonly client: string;
  readonly kind: ClientMarkKind;
  readonly kept: string;
  readonly label: string;
  readonly hint?: string;
  readonly maxLength: number;
  readonly acting: Acting;
}

/** One line that is kept about a client. Saved when its button is pressed; empty takes it away. */
export const MarkField = ({ client, kind, kept, label, hint, maxLength, acting }: MarkFieldProps) => {
  const words = useMessages().clientOwn;
  const { keeping } = useSession();
  const [text, setText] = useState(kept);
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    void acting.start((workspace) => workspace.writeMark(client, kind, text.trim()), words.saved);
  };
  return (
    <form className={styles.field} onSubmit={submit}>
      <LabelledInput label={label} type="text" value={text} onChange={setText} maxLength={maxLength} />
      <button
        type="submit"
        className="button"
        aria-label={`${words.save}: ${label}`}
        disabled={acting.busy || !keeping.writer || text.trim() === kept}
      >
        {words.save}
      </button>
      {hint === undefined ? null : <p className="quiet small">{hint}</p>}
    </form>
  );
};
