'use client';

import { useState, type FormEvent } from 'react';
import type { EndReason } from '../../../lib/cohort/settings-parts/enrolment-settings';
import { parseIsoDate, type IsoDate } from '../../../lib/core/iso-date';
import { useMessages } from '../../_state/language-provider';
import { LabelledInput } from '../../_ui/labelled-input';
import { LabelledSelect } from '../../_ui/labelled-select';

const REASONS = ['none', 'finished', 'moved', 'declined', 'medical', 'operated', 'died', 'other'] as const;

interface EndFormProps {
  readonly program: string;
  readonly start: IsoDate | null;
  readonly busy: boolean;
  readonly onSave: (end: IsoDate, reason: EndReason | null) => void;
  readonly onCancel: () => void;
}

/** When and why an enrolment ended. */
export const EndForm = ({ program, start, busy, onSave, onCancel }: EndFormProps) => {
  const { settingsPrograms } = useMessages();
  const words = settingsPrograms.enrolments;
  const [date, setDate] = useState('');
  const [reason, setReason] = useState<(typeof REASONS)[number]>('none');
  const end = parseIsoDate(date);
  const isPossible = end !== undefined && (start === null || end >= start);
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    if (isPossible) onSave(end, reason === 'none' ? null : reason);
  };
  return (
    <form className="stack" onSubmit={submit} aria-label={words.endOf({ program })}>
      <div className="row">
        <LabelledInput label={words.endDate} type="date" value={date} onChange={setDate} />
        <LabelledSelect
          label={words.reason}
          value={reason}
          options={REASONS.map((value) => ({ value, label: words.reasons[value] }))}
          onChange={setReason}
        />
      </div>
      {date === '' || isPossible ? null : <p role="alert">{words.badDate}</p>}
      <div className="row">
        <button type="submit" className="button button-strong" disabled={busy || !isPossible}>
          {words.saveEnd}
        </button>
        <button type="button" className="button" onClick={onCancel}>
          {words.cancel}
        </button>
      </div>
    </form>
  );
};
