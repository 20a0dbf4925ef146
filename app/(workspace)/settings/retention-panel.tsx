'use client';

import { useState, type FormEvent } from 'react';
import { parseIsoDate } from '../../../lib/core/iso-date';
import { useFormatters, useMessages } from '../../_state/language-provider';
import { useActing } from '../../_state/use-acting';
import { useSession } from '../../_state/workspace-provider';
import { ActNote } from '../../_ui/act-note';
import { LabelledInput } from '../../_ui/labelled-input';
import styles from './settings-screen.module.css';
import { WritingPart } from './writing-part';

const MOST_MONTHS = 600;

/** Months as written; null for none, undefined where it is no number of months. */
export const monthsFrom = (text: string): number | null | undefined => {
  if (text.trim() === '') return null;
  const months = Number(text);
  return Number.isInteger(months) && months >= 1 && months <= MOST_MONTHS ? months : undefined;
};

/** Until when the clinic keeps its visits. */
export const RetentionPanel = () => {
  const words = useMessages().settingsPrivacy.retention;
  const formatters = useFormatters();
  const { retentionMonths, keeping } = useSession();
  const acting = useActing();
  const [draft, setDraft] = useState<string | undefined>(undefined);
  const kept = retentionMonths === null ? '' : String(retentionMonths);
  const months = monthsFrom(draft ?? kept);
  const day = keeping.keepUntil === null ? undefined : parseIsoDate(keeping.keepUntil.slice(0, 10));
  const date = day === undefined ? undefined : formatters.date(day);
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    if (months === undefined) return;
    void acting
      .start((workspace) => workspace.setRetention(months), words.saved)
      .then((done) => {
        if (done) setDraft(undefined);
      });
  };
  return (
    <div className={styles.panel}>
      <h3>{words.title}</h3>
      <p className={keeping.overdue ? styles.warning : undefined}>
        {date === undefined ? words.none : keeping.overdue ? words.overdue({ date }) : words.until({ date })}
      </p>
      <WritingPart>
        <form className={styles.fields} onSubmit={submit}>
          <LabelledInput
            label={words.label}
            type="text"
            inputMode="numeric"
            value={draft ?? kept}
            onChange={setDraft}
            maxLength={3}
          />
          <button
            type="submit"
            className="button"
            disabled={acting.busy || months === undefined || months === retentionMonths}
          >
            {words.save}
          </button>
        </form>
        <p className="quiet small" role={months === undefined ? 'alert' : undefined}>
          {months === undefined ? words.invalid : words.hint}
        </p>
      </WritingPart>
      <ActNote acting={acting} />
    </div>
  );
};
