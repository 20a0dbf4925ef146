'use client';

import { useState, type FormEvent } from 'react';
import { ok } from '../../lib/core/result';
import { useMessages } from '../_state/language-provider';
import { useActing } from '../_state/use-acting';
import { useWorkspace } from '../_state/workspace-provider';
import { ActNote } from './act-note';
import { FileField } from './file-field';
import { PassphraseField } from './passphrase-field';
import { SegmentedChoice } from './segmented-choice';

interface Chosen {
  readonly file: File;
  readonly sealed: boolean;
}

/** A backup back into this browser: in the place of the open clinic, or beside it. Without an open clinic, as a new one. */
export const RestorePanel = () => {
  const messages = useMessages();
  const words = messages.settingsKeeping.restore;
  const { state } = useWorkspace();
  const acting = useActing();
  const [chosen, setChosen] = useState<Chosen | undefined>(undefined);
  const [passphrase, setPassphrase] = useState('');
  const [wanted, setWanted] = useState<'replace' | 'new'>('replace');
  const clinic = state.kind === 'open' ? state.session.clinic : undefined;
  // The demo comes with the app: nothing is put in its place.
  const canReplace = clinic !== undefined && clinic.kind === 'own';
  const as = canReplace ? wanted : 'new';

  const choose = async (file: File | undefined): Promise<void> => {
    setChosen(undefined);
    setPassphrase('');
    if (file === undefined) return;
    const sealed = await acting.ask(async (workspace) => ok(await workspace.isSealed(file)));
    if (sealed !== undefined) setChosen({ file, sealed });
  };
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    if (chosen === undefined) return;
    const options = { passphrase: chosen.sealed ? passphrase : null, as };
    void acting
      .startLong((workspace, step) => workspace.restore(chosen.file, options, step), words.done)
      .then((done) => {
        if (done) setPassphrase('');
      });
  };
  return (
    <form className="stack" onSubmit={submit}>
      <FileField label={words.choose} disabled={acting.busy} onFile={(file) => void choose(file)} />
      {chosen === undefined ? null : (
        <>
          {!canReplace ? null : (
            <SegmentedChoice
              label={words.as}
              value={wanted}
              options={[
                { value: 'replace', label: words.replace },
                { value: 'new', label: words.new },
              ]}
              onChange={setWanted}
            />
          )}
          <p>
            {as === 'replace' && canReplace ? <bdi>{words.replaceWhat({ clinic: clinic.name })}</bdi> : words.newWhat}
          </p>
          {chosen.sealed ? (
            <PassphraseField
              label={words.sealed}
              purpose="current-password"
              value={passphrase}
              onChange={setPassphrase}
            />
          ) : null}
          <button
            type="submit"
            className="button button-strong"
            disabled={acting.busy || (chosen.sealed && passphrase === '')}
          >
            {words.act}
          </button>
        </>
      )}
      <ActNote acting={acting} />
    </form>
  );
};
