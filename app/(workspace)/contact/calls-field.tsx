'use client';

import { useState, type FormEvent } from 'react';
import { useMessages } from '../../_state/language-provider';
import { useActing } from '../../_state/use-acting';
import { useSession } from '../../_state/workspace-provider';
import { ActNote } from '../../_ui/act-note';
import { LabelledInput } from '../../_ui/labelled-input';

const MOST = 99;

/** How many calls a week, as written; null: no line; undefined: not a number of calls. */
const callsFrom = (text: string): number | null | undefined => {
  if (text.trim() === '') return null;
  const calls = Number(text);
  return Number.isInteger(calls) && calls >= 1 && calls <= MOST ? calls : undefined;
};

/** “I can call 5 a week”: where the line stands. */
export const CallsField = () => {
  const words = useMessages().contact;
  const { settings, keeping } = useSession();
  const acting = useActing();
  const { callsPerWeek, ...contacts } = settings.contacts;
  const kept = callsPerWeek === undefined ? '' : String(callsPerWeek);
  const [draft, setDraft] = useState<string | undefined>(undefined);
  const calls = callsFrom(draft ?? kept);
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    if (calls === undefined) {
      acting.say(words.callsBad);
      return;
    }
    const next = calls === null ? contacts : { ...contacts, callsPerWeek: calls };
    void acting
      .start((workspace) => workspace.saveSettings({ ...settings, contacts: next }), words.callsSaved)
      .then((done) => {
        if (done) setDraft(undefined);
      });
  };
  return (
    <form className="row no-print" onSubmit={submit}>
      <LabelledInput
        label={words.callsLabel}
        type="text"
        inputMode="numeric"
        value={draft ?? kept}
        onChange={setDraft}
        maxLength={2}
      />
      <button type="submit" className="button" disabled={acting.busy || !keeping.writer}>
        {words.callsSave}
      </button>
      <ActNote acting={acting} />
    </form>
  );
};
