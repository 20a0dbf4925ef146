'use client';

import { useState, type FormEvent } from 'react';
import { useFormatters, useMessages } from '../../_state/language-provider';
import { useActing } from '../../_state/use-acting';
import { ActNote } from '../../_ui/act-note';
import { LabelledInput } from '../../_ui/labelled-input';
import { Modal } from '../../_ui/modal';
import { dateOf } from './reading-columns';
import type { ClientRow } from './use-client-rows';

interface SetAsideDialogProps {
  readonly row: ClientRow;
  /** With what is said afterwards; undefined where nothing was set aside. */
  readonly onEnd: (said: string | undefined) => void;
}

/** Why a reading is left out. */
export const SetAsideDialog = ({ row, onEnd }: SetAsideDialogProps) => {
  const messages = useMessages();
  const words = messages.client.setAside;
  const formatters = useFormatters();
  const acting = useActing();
  const [reason, setReason] = useState('');
  const [problem, setProblem] = useState<string | undefined>(undefined);
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    const missing = reason.trim() === '' ? words.needsReason : undefined;
    setProblem(missing);
    if (missing !== undefined) return;
    void acting
      .start((workspace) => workspace.setAsideRows([row.row], reason.trim()))
      .then((done) => {
        if (done) onEnd(words.done);
      });
  };
  const leave = (): void => {
    if (!acting.busy) onEnd(undefined);
  };
  return (
    <Modal title={words.title({ date: dateOf(row, formatters) })} onCancel={leave}>
      <p>{words.lead}</p>
      <form className="stack" onSubmit={submit}>
        <LabelledInput label={words.reason} type="text" value={reason} onChange={setReason} maxLength={200} />
        <p className="small" role="alert">
          {problem}
        </p>
        <div className="row">
          <button type="submit" className="button button-strong" disabled={acting.busy}>
            {words.act}
          </button>
          <button type="button" className="button" disabled={acting.busy} onClick={leave}>
            {messages.client.cancel}
          </button>
        </div>
      </form>
      <ActNote acting={acting} />
    </Modal>
  );
};
