'use client';

import { useState, type FormEvent } from 'react';
import { err, ok } from '../../../lib/core/result';
import { useMessages } from '../../_state/language-provider';
import { useActing } from '../../_state/use-acting';
import { ActNote } from '../../_ui/act-note';
import { LabelledInput } from '../../_ui/labelled-input';
import { useSaveFile } from '../../_ui/use-save-file';
import { ErasePanel } from './erase-panel';
import type { FoundPerson } from './found-person';
import styles from './settings-screen.module.css';
import { WritingPart } from './writing-part';

/** One person, found by id: everything as a file, or erased. */
export const PersonPanel = () => {
  const words = useMessages().settingsPrivacy;
  const acting = useActing();
  const { saveMade } = useSaveFile();
  const [id, setId] = useState('');
  const [found, setFound] = useState<FoundPerson | undefined>(undefined);

  const find = (event: FormEvent): void => {
    event.preventDefault();
    const client = id.trim();
    setFound(undefined);
    void acting
      .ask(async (workspace) => {
        const rows = await workspace.rowsOf(client);
        if (rows.length === 0) return err({ code: 'unknown_client', message: words.person.notFound, remedy: '' });
        return ok({ client, rows: rows.map(({ row, file }) => ({ row, file })) });
      })
      .then(setFound);
  };
  const save = (person: FoundPerson): void =>
    void acting
      .ask((workspace) => workspace.everythingAbout(person.client))
      .then(async (made) => {
        if (made !== undefined && (await saveMade('person', made, person.rows.length)))
          acting.say(words.everything.saved);
      });
  return (
    <div className={`${styles.panel ?? ''} no-print`}>
      <h3>{words.person.title}</h3>
      <p>{words.person.lead}</p>
      <form className={styles.fields} onSubmit={find}>
        <LabelledInput label={words.person.label} type="text" value={id} onChange={setId} maxLength={200} />
        <button type="submit" className="button" disabled={acting.busy || id.trim() === ''}>
          {words.person.find}
        </button>
      </form>
      <ActNote acting={acting} />
      {found === undefined ? null : (
        <div className={`sheet stack-wide ${styles.wide ?? ''}`}>
          <p className="serif">
            <strong>
              <bdi>{found.client}</bdi>
            </strong>
            {': '}
            {words.person.found({ rows: found.rows.length, files: new Set(found.rows.map(({ file }) => file)).size })}
          </p>
          <div className="stack">
            <h4>{words.everything.title}</h4>
            <p>{words.everything.lead}</p>
            <button
              type="button"
              className="button"
              disabled={acting.busy}
              onClick={() => {
                save(found);
              }}
            >
              {words.everything.act}
            </button>
          </div>
          <WritingPart>
            <ErasePanel
              person={found}
              onErased={() => {
                setFound(undefined);
                setId('');
                acting.say(words.erase.done);
              }}
            />
          </WritingPart>
        </div>
      )}
    </div>
  );
};
