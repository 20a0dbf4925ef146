'use client';

import { useState, type FormEvent } from 'react';
import { useMessages } from '../../_state/language-provider';
import { useActing } from '../../_state/use-acting';
import { useSession } from '../../_state/workspace-provider';
import { ActNote } from '../../_ui/act-note';
import { LabelledInput } from '../../_ui/labelled-input';
import styles from './settings-screen.module.css';

/** Another name for the open clinic. */
export const RenameClinic = () => {
  const words = useMessages().settings.clinics;
  const { clinic } = useSession();
  const acting = useActing();
  const [draft, setDraft] = useState<string | undefined>(undefined);
  const name = (draft ?? clinic.name).trim();
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    void acting
      .start((workspace) => workspace.renameClinic(name), words.renamed)
      .then((done) => {
        if (done) setDraft(undefined);
      });
  };
  return (
    <form className={styles.panel} onSubmit={submit}>
      <h3>{words.rename}</h3>
      <div className={styles.fields}>
        <LabelledInput
          label={words.renameLabel}
          type="text"
          value={draft ?? clinic.name}
          onChange={setDraft}
          maxLength={80}
        />
        <button type="submit" className="button" disabled={acting.busy || name === '' || name === clinic.name}>
          {words.renameAct}
        </button>
      </div>
      <ActNote acting={acting} />
    </form>
  );
};
