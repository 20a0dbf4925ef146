'use client';

import { useState } from 'react';
import { useMessages, usePreferences } from '../../_state/language-provider';
import { useActing } from '../../_state/use-acting';
import { useLock } from '../../_state/use-lock';
import { useSession } from '../../_state/workspace-provider';
import { ActNote } from '../../_ui/act-note';
import { LabelledSelect } from '../../_ui/labelled-select';
import { NewPassphrase } from './new-passphrase';
import styles from './settings-screen.module.css';
import { SettingsSection } from './settings-section';
import { WritingPart } from './writing-part';

const IDLE = [5, 15, 30, 0] as const;

const LockPanel = () => {
  const words = useMessages().settingsKeeping.seal;
  const { preferences, setPreferences } = usePreferences();
  const lock = useLock();
  return (
    <div className={`${styles.panel ?? ''} no-print`}>
      <div className={styles.fields}>
        <button type="button" className="button button-strong" onClick={() => void lock()}>
          {words.lockNow}
        </button>
        <LabelledSelect
          label={words.idle}
          value={String(preferences.idleLockMinutes)}
          options={IDLE.map((minutes) => ({ value: String(minutes), label: words.idleOption[minutes] }))}
          onChange={(chosen) => {
            const idleLockMinutes = IDLE.find((minutes) => String(minutes) === chosen);
            if (idleLockMinutes !== undefined) setPreferences({ ...preferences, idleLockMinutes });
          }}
        />
      </div>
      <p className="quiet small">{words.lockNote}</p>
    </div>
  );
};

const RemovePassphrase = () => {
  const words = useMessages().settingsKeeping.seal;
  const acting = useActing();
  const [asked, setAsked] = useState(false);
  return (
    <div className={styles.panel}>
      <h3>{words.remove}</h3>
      <p>
        {words.removeWhat} {words.open}
      </p>
      <div className="row">
        {asked ? (
          <button
            type="button"
            className="button button-strong"
            disabled={acting.busy}
            onClick={() =>
              void acting.startLong((workspace, step) => workspace.setPassphrase(null, step), words.removed)
            }
          >
            {words.removeNow}
          </button>
        ) : null}
        <button
          type="button"
          className="button"
          disabled={acting.busy}
          aria-expanded={asked}
          onClick={() => {
            setAsked(!asked);
          }}
        >
          {asked ? words.keepIt : words.removeAct}
        </button>
      </div>
      <ActNote acting={acting} />
    </div>
  );
};

/** Sealing the clinic at rest in this browser. */
export const PassphraseSection = () => {
  const words = useMessages().settingsKeeping.seal;
  const { sealed } = useSession().keeping;
  return (
    <SettingsSection id="passphrase" lead={sealed ? words.sealed : words.open}>
      {sealed ? <LockPanel /> : null}
      <WritingPart>
        <NewPassphrase key={String(sealed)} sealed={sealed} />
        {sealed ? <RemovePassphrase /> : null}
      </WritingPart>
    </SettingsSection>
  );
};
