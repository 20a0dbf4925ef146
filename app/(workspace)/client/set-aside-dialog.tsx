'use client';

import { useState, type FormEvent } from 'react';
import { useFormatters, useMessages } from '../../_state/language-provider';
import { useActing } from '../../_state/use-acting';
import { ActNote } from '../../_ui/act-note';
import { LabelledInput } from '../../_ui/labelled-input';
import { Modal } from '../../_ui/modal';
import { SegmentedChoice } from '../../_ui/segmented-choice';
import { dateOf } from './reading-columns';
import type { ClientRow } from './use-client-rows';

const EXTENTS = ['reading', 'visit'] as const;

interface SetAsideDialogProps {
  readonly row: ClientRow;
  /** All readings of its visit, itself among them. */
  readonly visit: readonly ClientRow[];
  /** With what is said afterwards; undefined where nothing was set aside. */
  readonly onEnd: (said: string | undefined) => void;
}

/** Why a reading, or every reading of its visit, is left out: one step, undone at once. */
export const SetAsideDialog = ({ row, visit, onEnd }: SetAsideDialogProps) => {
  const messages = useMessages();
  const words = messages.client.setAside;
  const formatters = useFormatters();
  const acting = useActing();
  const [reason, setReason] = useState('');
  const [extent, setExtent] = useState<(typeof EXTENTS)[number]>('reading');
  const rows = extent === 'visit' ? visit : [row];
  const [problem, setProblem] = useState<string | undefined>(undefined);
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    const missing = reason.trim() === '' ? words.needsReason : undefined;
    setProblem(missing);
    if (missing !== undefined) return;
    void acting
      .start((workspace) =>
        workspace.setAsideRows(
          rows.map((one) => one.row),
          reason.trim(),
        ),
      )
      .then((done) => {
        if (done) onEnd(words.done({ n: rows.length }));
      });
  };
  const leave = (): void => {
    if (!acting.busy) onEnd(undefined);
  };
  return (
    <Modal title={words.title({ date: dateOf(row, formatters) })} onCancel={leave}>
      <p>{words.lead}</p>
      <form className="stack" onSubmit={submit}>
        {visit.length < 2 ? null : (
          <SegmentedChoice
            label={words.extent}
            value={extent}
            options={EXTENTS.map((value) => ({ value, label: words.extents[value]({ n: visit.length }) }))}
            onChange={setExtent}
          />
        )}
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
