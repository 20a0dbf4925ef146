'use client';

import { useEffect, useState } from 'react';
import { ok } from '../../../lib/core/result';
import type { SharedFileFault } from '../../../lib/storage/browser/shared-file';
import type { MergePreview } from '../../../lib/workspace/workspace';
import { keptSharedFiles } from '../../_state/browser-kept';
import { useMessages } from '../../_state/language-provider';
import { useActing, type Acting } from '../../_state/use-acting';
import { useSession } from '../../_state/workspace-provider';
import { saveBlob } from '../../_ui/save-blob';

export interface Compared {
  readonly file: File;
  readonly preview: MergePreview;
}

export interface SharedFile {
  readonly acting: Acting;
  /** Whether this browser opens and saves files in place. */
  readonly inPlace: boolean;
  /** The file that this browser remembers for the clinic. */
  readonly remembered: string | undefined;
  readonly compared: Compared | undefined;
  /** A chosen file that waits for its passphrase. */
  readonly waiting: File | undefined;
  readonly compare: (file: File | undefined, passphrase: string | null) => Promise<void>;
  readonly open: (ask: boolean, passphrase: string | null) => Promise<void>;
  readonly save: (ask: boolean, passphrase: string | null) => Promise<void>;
  readonly merge: (choices: Readonly<Record<string, 'mine' | 'theirs'>>, passphrase: string | null) => Promise<void>;
  readonly leave: () => void;
}

/** The clinic's file in a shared folder: opened and compared, merged, saved. */
export const useSharedFile = (): SharedFile => {
  const words = useMessages().settingsKeeping.shared;
  const { clinic } = useSession();
  const acting = useActing();
  const [remembered, setRemembered] = useState<string | undefined>(undefined);
  const [waiting, setWaiting] = useState<File | undefined>(undefined);
  const [compared, setCompared] = useState<Compared | undefined>(undefined);

  useEffect(() => {
    let current = true;
    void keptSharedFiles.remembered(clinic.id).then((name) => {
      if (current) setRemembered(name);
    });
    return () => {
      current = false;
    };
  }, [clinic.id]);

  const compare = async (file: File | undefined, passphrase: string | null): Promise<void> => {
    setCompared(undefined);
    setWaiting(file);
    if (file === undefined) return;
    const sealed = await acting.ask(async (workspace) => ok(await workspace.isSealed(file)));
    if (sealed === undefined) return;
    if (sealed && passphrase === null) {
      acting.say(words.needsPassphrase);
      return;
    }
    const preview = await acting.ask((workspace) => workspace.previewMerge(file, passphrase));
    if (preview === undefined) return;
    setCompared({ file, preview });
    setWaiting(undefined);
  };
  const fault = (error: SharedFileFault): void => {
    acting.say(error === 'dismissed' ? undefined : words.faults[error]);
  };
  const open = async (ask: boolean, passphrase: string | null): Promise<void> => {
    const answer = await keptSharedFiles.open(clinic.id, ask);
    if (!answer.ok) {
      fault(answer.error);
      return;
    }
    setRemembered(answer.value.name);
    await compare(answer.value, passphrase);
  };
  const save = async (ask: boolean, passphrase: string | null): Promise<void> => {
    let said = '';
    const done = await acting.startLong(async (workspace, step) => {
      const answer = await workspace.saveShared(passphrase, step);
      if (!answer.ok) return answer;
      const { made, session } = answer.value;
      const written = await keptSharedFiles.save(clinic.id, made.blob, ask ? made.name : null);
      if (written.ok) {
        setRemembered(written.value);
        said = words.saved({ name: written.value });
      } else {
        // What others will compare with is this file: it must not be lost because no place was chosen.
        saveBlob(made);
        const why = written.error === 'unsupported' ? '' : `${words.faults[written.error]} `;
        said = `${why}${words.savedDownload({ name: made.name })}`;
      }
      return ok(session);
    });
    if (done) acting.say(said);
  };
  const leave = (): void => {
    setCompared(undefined);
    setWaiting(undefined);
  };
  const merge: SharedFile['merge'] = async (choices, passphrase) => {
    if (compared === undefined) return;
    const options = { name: compared.file.name, passphrase, choices };
    if (await acting.startLong((workspace, step) => workspace.merge(compared.file, options, step), words.merged))
      leave();
  };
  return {
    acting,
    inPlace: keptSharedFiles.supported,
    remembered,
    compared,
    waiting,
    compare,
    open,
    save,
    merge,
    leave,
  };
};
