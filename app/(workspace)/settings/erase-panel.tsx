'use client';

import { useMessages } from '../../_state/language-provider';
import { useActing } from '../../_state/use-acting';
import { useInstantWords } from '../../_state/use-instant-words';
import { useSession } from '../../_state/workspace-provider';
import { ActNote } from '../../_ui/act-note';
import { TypedConfirmation } from '../../_ui/typed-confirmation';
import { erasureCounts, type FoundPerson } from './found-person';
import styles from './settings-screen.module.css';

/** Erasing a person: what happens in words, the backups that still hold the person, the id typed. */
export const ErasePanel = ({ person, onErased }: { readonly person: FoundPerson; readonly onErased: () => void }) => {
  const words = useMessages().settingsPrivacy.erase;
  const session = useSession();
  const instant = useInstantWords();
  const acting = useActing();
  const counts = erasureCounts(person, session);
  const happens = [
    words.rows(counts),
    words.notes({ n: counts.notes }),
    words.corrections({ n: counts.corrections }),
    words.undo,
    words.again,
    words.others,
  ];
  const confirm = async (): Promise<void> => {
    if (await acting.start((workspace) => workspace.erase(person.client))) onErased();
  };
  return (
    <div className="stack">
      <h4>{words.title}</h4>
      <p>{words.will}:</p>
      <ul className={styles.points}>
        {happens.map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
      {session.backups.length === 0 ? (
        <p>{words.noBackups}</p>
      ) : (
        <>
          <p>{words.backups}</p>
          <ul className={styles.points}>
            {session.backups.map(({ at, name, sha256 }) => (
              <li key={`${at} ${sha256}`}>
                <bdi>{words.backup({ name, when: instant.at(at) })}</bdi>
              </li>
            ))}
          </ul>
        </>
      )}
      <TypedConfirmation text={person.client} act={words.confirm} busy={acting.busy} onConfirm={() => void confirm()} />
      <ActNote acting={acting} />
    </div>
  );
};
