'use client';

import { useState, type FormEvent } from 'react';
import { useMessages } from '../../_state/language-provider';
import { useInstantWords } from '../../_state/use-instant-words';
import { useSession } from '../../_state/workspace-provider';
import { ActNote } from '../../_ui/act-note';
import { FileField } from '../../_ui/file-field';
import { PassphraseField } from '../../_ui/passphrase-field';
import { MergeReview } from './merge-review';
import styles from './settings-screen.module.css';
import { useSharedFile } from './use-shared-file';

/** One file for several log-ins: saved, opened, compared, merged. */
export const SharedPanel = () => {
  const words = useMessages().settingsKeeping.shared;
  const { keeping, clinic } = useSession();
  const instant = useInstantWords();
  const [passphrase, setPassphrase] = useState('');
  const file = useSharedFile();
  const { acting, inPlace, remembered, compared, waiting } = file;
  const secret = passphrase === '' ? null : passphrase;
  const { shared } = keeping;
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    if (waiting !== undefined) void file.compare(waiting, secret);
  };
  const button = (label: string, act: () => Promise<void>) => (
    <button type="button" className="button" disabled={acting.busy} onClick={() => void act()}>
      <bdi>{label}</bdi>
    </button>
  );
  if (clinic.kind === 'demo')
    return (
      <div className={styles.panel}>
        <h3>{words.title}</h3>
        <p>
          {words.lead} {words.notDemo}
        </p>
      </div>
    );
  return (
    <form className={styles.panel} onSubmit={submit}>
      <h3>{words.title}</h3>
      <p>{words.lead}</p>
      <p>
        <bdi>
          {shared === null
            ? words.none
            : words.connected({ name: shared.name, when: instant.ago(shared.at), by: shared.lastWriter })}
        </bdi>
      </p>
      {inPlace ? null : <p className="quiet small">{words.noPicker}</p>}
      <PassphraseField
        label={words.passphrase}
        purpose="current-password"
        value={passphrase}
        onChange={setPassphrase}
      />
      {inPlace ? null : (
        <FileField label={words.open} disabled={acting.busy} onFile={(chosen) => void file.compare(chosen, secret)} />
      )}
      <div className="row">
        {inPlace && remembered !== undefined
          ? button(words.openAgain({ name: remembered }), () => file.open(false, secret))
          : null}
        {inPlace ? button(words.open, () => file.open(true, secret)) : null}
        {waiting === undefined ? null : (
          <button type="submit" className="button" disabled={acting.busy}>
            {words.compare}
          </button>
        )}
        {inPlace && remembered !== undefined
          ? button(words.saveAgain({ name: remembered }), () => file.save(false, secret))
          : null}
        {button(words.save, () => file.save(true, secret))}
      </div>
      {compared === undefined ? null : (
        <MergeReview
          preview={compared.preview}
          busy={acting.busy}
          onMerge={(choices) => void file.merge(choices, secret)}
          onLeave={file.leave}
        />
      )}
      <ActNote acting={acting} />
    </form>
  );
};
