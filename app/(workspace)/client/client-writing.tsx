'use client';

import { useId, useState, type FormEvent } from 'react';
import { useMessages } from '../../_state/language-provider';
import { useActing } from '../../_state/use-acting';
import { useInstantWords } from '../../_state/use-instant-words';
import { useSession } from '../../_state/workspace-provider';
import { ActNote } from '../../_ui/act-note';
import styles from './client-readings.module.css';

const LONGEST_NOTE = 2000;

/** Notes about the client: write one, read them newest first. */
export const ClientWriting = ({ client }: { readonly client: string }) => {
  const words = useMessages().client;
  const instant = useInstantWords();
  const { notes, keeping } = useSession();
  const acting = useActing();
  const id = useId();
  const [text, setText] = useState('');
  const own = notes.filter((note) => note.client === client).toReversed();
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    void acting
      .start((workspace) => workspace.writeNote(client, text.trim()), words.noteDone)
      .then((done) => {
        if (done) setText('');
      });
  };
  return (
    <section className="sheet" aria-labelledby={`${id}-title`}>
      <h2 id={`${id}-title`}>{words.notesTitle}</h2>
      <p className={`small ${styles.lead ?? ''}`}>{words.notesLead}</p>
      <form className="stack" onSubmit={submit}>
        <div className={styles.area}>
          <label htmlFor={id}>{words.noteLabel}</label>
          <textarea
            id={id}
            rows={3}
            maxLength={LONGEST_NOTE}
            value={text}
            disabled={!keeping.writer}
            onChange={(event) => {
              setText(event.target.value);
            }}
          />
        </div>
        <button type="submit" className="button" disabled={acting.busy || !keeping.writer || text.trim() === ''}>
          {words.noteAct}
        </button>
        <ActNote acting={acting} />
      </form>
      {own.length === 0 ? (
        <p className="quiet">{words.noteNone}</p>
      ) : (
        <ul className={styles.list}>
          {own.map((note) => (
            <li key={note.id}>
              <p className={styles.text}>
                <bdi>{note.text}</bdi>
              </p>
              <p className="quiet small">
                {note.initials === '' ? instant.at(note.at) : `${instant.at(note.at)}, ${note.initials}`}
              </p>
            </li>
          ))}
        </ul>
      )}
    </section>
  );
};
