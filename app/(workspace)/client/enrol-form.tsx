'use client';

import { useState, type FormEvent } from 'react';
import { parseIsoDate, type IsoDate } from '../../../lib/core/iso-date';
import { useMessages } from '../../_state/language-provider';
import { LabelledInput } from '../../_ui/labelled-input';
import { LabelledSelect } from '../../_ui/labelled-select';

interface EnrolFormProps {
  readonly programs: readonly string[];
  /** Whether the client is in that program from that day already. */
  readonly isTaken: (program: string, start: IsoDate) => boolean;
  readonly busy: boolean;
  readonly onSave: (program: string, start: IsoDate) => void;
  readonly onCancel: () => void;
}

/** A program that a client is in from a day on. */
export const EnrolForm = ({ programs, isTaken, busy, onSave, onCancel }: EnrolFormProps) => {
  const { settingsPrograms } = useMessages();
  const words = settingsPrograms.enrolments;
  const [program, setProgram] = useState(programs[0] ?? '');
  const [date, setDate] = useState('');
  const start = parseIsoDate(date);
  const taken = start !== undefined && isTaken(program, start);
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    if (start !== undefined && !taken) onSave(program, start);
  };
  return (
    <form className="stack" onSubmit={submit} aria-label={words.add}>
      <div className="row">
        <LabelledSelect
          label={words.program}
          value={program}
          options={programs.map((value) => ({ value, label: value }))}
          onChange={setProgram}
        />
        <LabelledInput label={words.start} type="date" value={date} onChange={setDate} />
      </div>
      {taken ? <p role="alert">{words.taken}</p> : null}
      <div className="row">
        <button type="submit" className="button button-strong" disabled={busy || start === undefined || taken}>
          {words.saveAdd}
        </button>
        <button type="button" className="button" onClick={onCancel}>
          {words.cancel}
        </button>
      </div>
    </form>
  );
};
