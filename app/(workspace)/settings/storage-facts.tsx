'use client';

import { useState } from 'react';
import { useMessages } from '../../_state/language-provider';
import { useActing } from '../../_state/use-acting';
import { useKeepingSigns } from '../../_state/use-keeping-signs';
import { useSession } from '../../_state/workspace-provider';
import { ok } from '../../../lib/core/result';
import { ActNote } from '../../_ui/act-note';
import { FactList } from '../../_ui/fact-list';
import styles from './settings-screen.module.css';

/** The room in this browser, whether it may clear the clinic, and what hints that it will. */
export const StorageFacts = () => {
  const messages = useMessages();
  const words = messages.settingsKeeping;
  const { room } = useSession().keeping;
  const acting = useActing();
  const [agreed, setAgreed] = useState(false);
  const persisted = room.persisted || agreed;
  const size = (bytes: number): string => messages.settings.size({ bytes });
  const used =
    room.usedBytes === null
      ? words.roomUnknown
      : room.quotaBytes === null
        ? words.roomUsedOnly({ used: size(room.usedBytes) })
        : words.roomUsed({ used: size(room.usedBytes), quota: size(room.quotaBytes) });
  const seen = useKeepingSigns();
  const signs = [
    ...(room.quotaBytes === null ? [words.signs.noStorage] : []),
    ...(seen?.littleRoom === true ? [words.signs.littleRoom({ quota: size(room.quotaBytes ?? 0) })] : []),
    ...(seen?.storage === 'data-cleared' || seen?.storage === 'partly-cleared' ? [words.signs.clears] : []),
    ...(seen !== undefined && seen.survivors > 0 ? [words.signs.survivors({ n: seen.survivors })] : []),
  ];
  const ask = async (): Promise<void> => {
    const answer = await acting.ask(async (workspace) => ok(await workspace.persist()));
    if (answer === undefined) return;
    setAgreed(answer);
    acting.say(answer ? words.persistAsked : words.persistRefused);
  };
  return (
    <>
      <FactList
        facts={[
          [words.room, used],
          [words.persisted, persisted ? words.isPersisted : words.notPersisted],
        ]}
      />
      {signs.map((text) => (
        <p key={text} className={styles.warning}>
          {text}
        </p>
      ))}
      {seen?.storage === 'first-visit-or-cleared' ? <p className="quiet measure">{words.signs.noTrace}</p> : null}
      {persisted ? null : (
        <div className="row">
          <button type="button" className="button" disabled={acting.busy} onClick={() => void ask()}>
            {words.persist}
          </button>
        </div>
      )}
      <ActNote acting={acting} />
    </>
  );
};
