'use client';

import { useRef, useState } from 'react';
import type { MergePreview } from '../../../lib/workspace/workspace';
import { ok } from '../../../lib/core/result';
import { useMessages } from '../../_state/language-provider';
import { useActing } from '../../_state/use-acting';
import { useInstantWords } from '../../_state/use-instant-words';
import { useSession } from '../../_state/workspace-provider';
import { ActNote } from '../../_ui/act-note';
import { FileField } from '../../_ui/file-field';
import { PassphraseField } from '../../_ui/passphrase-field';
import { saveBlob } from '../../_ui/save-blob';
import {
  canPickFiles,
  pickSharedFile,
  pickSharedPlace,
  writeShared,
  type SharedHandle,
} from '../../_ui/shared-file-picker';
import { MergeReview } from './merge-review';
import styles from './settings-screen.module.css';

/** One file for several log-ins: saved, opened, compared, merged. */
export const SharedPanel = () => {
  const words = useMessages().settingsKeeping.shared;
  const { shared } = useSession().keeping;
  const instant = useInstantWords();
  const acting = useActing();
  const [passphrase, setPassphrase] = useState('');
  const [compared, setCompared] = useState<{ file: File; preview: MergePreview } | undefined>(undefined);
  const [waiting, setWaiting] = useState<File | undefined>(undefined);
  const handle = useRef<SharedHandle>(undefined);
  const picks = canPickFiles();
  const secret = passphrase === '' ? null : passphrase;

  const compare = async (file: File | undefined): Promise<void> => {
    setCompared(undefined);
    setWaiting(file);
    if (file === undefined) return;
    const sealed = await acting.ask(async (workspace) => ok(await workspace.isSealed(file)));
    if (sealed === undefined) return;
    if (sealed && secret === null) {
      acting.say(words.needsPassphrase);
      return;
    }
    const preview = await acting.ask((workspace) => workspace.previewMerge(file, secret));
    if (preview !== undefined) setCompared({ file, preview });
  };
  const open = async (): Promise<void> => {
    handle.current = (await pickSharedFile()) ?? handle.current;
    await compare(await handle.current?.getFile());
  };
  const save = async (): Promise<void> => {
    let said = '';
    const done = await acting.start(async (workspace) => {
      const answer = await workspace.saveShared(secret);
      if (!answer.ok) return answer;
      const { made, session } = answer.value;
      const place = picks ? (handle.current ?? (await pickSharedPlace(made.name))) : undefined;
      if (place === undefined) saveBlob(made);
      else await writeShared(place, made.blob);
      handle.current = place;
      said = place === undefined ? words.savedDownload({ name: made.name }) : words.saved({ name: place.name });
      return ok(session);
    });
    if (done) acting.say(said);
  };
  const merge = async (choices: Readonly<Record<string, 'mine' | 'theirs'>>): Promise<void> => {
    if (compared === undefined) return;
    const options = { name: compared.file.name, passphrase: secret, choices };
    if (await acting.start((workspace) => workspace.merge(compared.file, options), words.merged))
      setCompared(undefined);
  };
  return (
    <div className={styles.panel}>
      <h3>{words.title}</h3>
      <p>{words.lead}</p>
      <p>
        <bdi>
          {shared === null
            ? words.none
            : words.connected({ name: shared.name, when: instant.ago(shared.at), by: shared.lastWriter })}
        </bdi>
      </p>
      {picks ? null : <p className="quiet small">{words.noPicker}</p>}
      <PassphraseField
        label={words.passphrase}
        purpose="current-password"
        value={passphrase}
        onChange={setPassphrase}
      />
      {picks ? null : <FileField label={words.open} disabled={acting.busy} onFile={(file) => void compare(file)} />}
      <div className="row">
        {picks ? (
          <button type="button" className="button" disabled={acting.busy} onClick={() => void open()}>
            {words.open}
          </button>
        ) : null}
        {waiting === undefined || compared !== undefined ? null : (
          <button type="button" className="button" disabled={acting.busy} onClick={() => void compare(waiting)}>
            {words.compare}
          </button>
        )}
        <button type="button" className="button" disabled={acting.busy} onClick={() => void save()}>
          {words.save}
        </button>
      </div>
      {compared === undefined ? null : (
        <MergeReview
          preview={compared.preview}
          busy={acting.busy}
          onMerge={(choices) => void merge(choices)}
          onLeave={() => {
            setCompared(undefined);
            setWaiting(undefined);
          }}
        />
      )}
      <ActNote acting={acting} />
    </div>
  );
};
