'use client';

import { useState, type FormEvent } from 'react';
import { useMessages, usePreferences } from '../../_state/language-provider';
import { ActNote } from '../../_ui/act-note';
import { LabelledInput } from '../../_ui/labelled-input';
import styles from './settings-screen.module.css';
import { SettingsSection } from './settings-section';

/** Whose initials stand beside what is done here. */
export const WhoSection = () => {
  const words = useMessages().settings.who;
  const { preferences, setPreferences } = usePreferences();
  const [draft, setDraft] = useState<string | undefined>(undefined);
  const [done, setDone] = useState<string | undefined>(undefined);
  const initials = (draft ?? preferences.initials).trim();
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    setPreferences({ ...preferences, initials });
    setDraft(undefined);
    setDone(initials === '' ? words.none : words.saved({ initials }));
  };
  return (
    <SettingsSection id="who" lead={words.lead}>
      <form className={styles.writing} onSubmit={submit}>
        <div className={styles.fields}>
          <LabelledInput
            label={words.label}
            type="text"
            value={draft ?? preferences.initials}
            onChange={setDraft}
            maxLength={6}
          />
          <button type="submit" className="button" disabled={initials === preferences.initials}>
            {words.save}
          </button>
        </div>
        <p className="quiet small">{words.hint}</p>
        <ActNote acting={{ busy: false, error: undefined, done }} />
      </form>
    </SettingsSection>
  );
};
