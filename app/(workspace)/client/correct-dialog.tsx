'use client';

import { useState, type FormEvent } from 'react';
import { useFormatters, useMessages } from '../../_state/language-provider';
import { useActing } from '../../_state/use-acting';
import { ActNote } from '../../_ui/act-note';
import { LabelledInput } from '../../_ui/labelled-input';
import { LabelledSelect } from '../../_ui/labelled-select';
import { Modal } from '../../_ui/modal';
import { CellField } from './cell-field';
import { correctableColumns } from './correctable-columns';
import { dateOf } from './reading-columns';
import type { ClientRow } from './use-client-rows';

interface CorrectDialogProps {
  readonly row: ClientRow;
  /** With what is said afterwards; undefined where nothing was corrected. */
  readonly onEnd: (said: string | undefined) => void;
}

/** One cell of a reading, its new value and why. */
export const CorrectDialog = ({ row, onEnd }: CorrectDialogProps) => {
  const messages = useMessages();
  const words = messages.client.correct;
  const formatters = useFormatters();
  const acting = useActing();
  const columns = correctableColumns(row.cells, messages.client.columnWord);
  const [column, setColumn] = useState(columns[0]?.value ?? '');
  const [to, setTo] = useState('');
  const [reason, setReason] = useState('');
  const [problem, setProblem] = useState<string | undefined>(undefined);
  const from = row.cells[column] ?? '';

  const submit = (event: FormEvent): void => {
    event.preventDefault();
    const value = to.trim();
    const missing = value === from ? words.needsChange : reason.trim() === '' ? words.needsReason : undefined;
    setProblem(missing);
    if (missing !== undefined) return;
    const change = { row: row.row, column, from, to: value };
    void acting
      .start((workspace) => workspace.correct([change], reason.trim()))
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
        <LabelledSelect
          label={words.column}
          value={column}
          options={columns}
          onChange={(next) => {
            setColumn(next);
            setTo('');
            setProblem(undefined);
          }}
        />
        <p>
          <bdi>{words.now({ value: from === '' ? words.nothing : from })}</bdi>
        </p>
        <CellField key={column} column={column} value={to} onChange={setTo} />
        <LabelledInput label={words.reason} type="text" value={reason} onChange={setReason} maxLength={200} />
        <p className="quiet small">{words.reasonHint}</p>
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
