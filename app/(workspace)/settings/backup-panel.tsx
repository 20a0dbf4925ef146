'use client';

import { useState, type FormEvent } from 'react';
import { ok } from '../../../lib/core/result';
import { useMessages } from '../../_state/language-provider';
import { useActing } from '../../_state/use-acting';
import { useInstantWords } from '../../_state/use-instant-words';
import { useSession } from '../../_state/workspace-provider';
import { ActNote } from '../../_ui/act-note';
import { Check } from '../../_ui/check';
import { PassphrasePair, passphraseProblem } from '../../_ui/passphrase-pair';
import { saveBlob } from '../../_ui/save-blob';
import { BackupTable } from './backup-table';
import styles from './settings-screen.module.css';
import { WritingPart } from './writing-part';

/** The last backup, what changed since, and a new one, sealed or not. */
export const BackupPanel = () => {
  const messages = useMessages();
  const words = messages.settingsKeeping.backups;
  const { keeping, clinic } = useSession();
  const instant = useInstantWords();
  const acting = useActing();
  const [sealed, setSealed] = useState(true);
  const [pair, setPair] = useState({ first: '', second: '' });
  const { lastBackup, changesSinceBackup } = keeping;
  const ready = !sealed || passphraseProblem(pair) === undefined;

  const submit = (event: FormEvent): void => {
    event.preventDefault();
    let said = '';
    void acting
      .startLong(async (workspace, step) => {
        const answer = await workspace.backUp(sealed ? pair.first : null, step);
        if (!answer.ok) return answer;
        const { made, session } = answer.value;
        saveBlob(made);
        said = words.made({ name: made.name, size: messages.settings.size({ bytes: made.blob.size }) });
        return ok(session);
      })
      .then((done) => {
        if (!done) return;
        acting.say(said);
        setPair({ first: '', second: '' });
      });
  };
  if (clinic.kind === 'demo')
    return (
      <div className={styles.panel}>
        <h3>{words.title}</h3>
        <p>{words.demo}</p>
      </div>
    );
  return (
    <div className={styles.panel}>
      <h3>{words.title}</h3>
      <p>
        <strong>
          {lastBackup === null
            ? words.never
            : words.last({ when: instant.ago(lastBackup.at), by: lastBackup.initials })}
        </strong>{' '}
        {lastBackup === null ? null : words.changes({ n: changesSinceBackup })}
      </p>
      <p>{words.what}</p>
      <WritingPart>
        <form className="stack" onSubmit={submit}>
          <Check label={words.seal} checked={sealed} onChange={setSealed} />
          <p className="quiet small">{sealed ? words.sealNote : words.plainNote}</p>
          {sealed ? <PassphrasePair pair={pair} onChange={setPair} /> : null}
          <button type="submit" className="button button-strong" disabled={acting.busy || !ready}>
            {words.make}
          </button>
        </form>
      </WritingPart>
      <ActNote acting={acting} />
      <BackupTable />
    </div>
  );
};
