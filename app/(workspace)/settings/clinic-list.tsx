'use client';

import { useState } from 'react';
import type { ClinicRef } from '../../../lib/workspace/workspace';
import { useMessages } from '../../_state/language-provider';
import { useActing } from '../../_state/use-acting';
import { useSession } from '../../_state/workspace-provider';
import { ActNote } from '../../_ui/act-note';
import { DeleteClinic } from './delete-clinic';
import styles from './settings-screen.module.css';
import { useClinics } from '../../_state/use-clinics';

/** The kept clinics by name, the open one marked. */
export const ClinicList = () => {
  const words = useMessages().settings.clinics;
  const session = useSession();
  const clinics = useClinics() ?? [session.clinic];
  const acting = useActing();
  const [deleting, setDeleting] = useState<ClinicRef | undefined>(undefined);
  const openId = session.clinic.id;
  const notes = (clinic: ClinicRef): string =>
    [
      ...(clinic.id === openId ? [words.isOpen] : []),
      ...(clinic.invented ? [words.invented] : []),
      ...(clinic.sealed ? [words.sealed] : []),
    ].join(' · ');
  return (
    <>
      <ul className={styles.list} aria-label={words.list} aria-busy={acting.busy}>
        {clinics.map((clinic) => (
          <li key={clinic.id}>
            <span className={styles.grow}>
              <strong>
                <bdi>{clinic.name}</bdi>
              </strong>{' '}
              <span className="quiet small">{notes(clinic)}</span>
            </span>
            {clinic.id === openId ? null : (
              <button
                type="button"
                className="button"
                disabled={acting.busy}
                aria-label={words.openNamed({ name: clinic.name })}
                onClick={() =>
                  void acting.start((workspace) => workspace.switchTo(clinic.id), words.opened({ name: clinic.name }))
                }
              >
                {words.open}
              </button>
            )}
            <button
              type="button"
              className="button"
              disabled={acting.busy || !session.keeping.writer}
              aria-label={words.deleteNamed({ name: clinic.name })}
              onClick={() => {
                setDeleting(clinic);
              }}
            >
              {words.deleteAct}
            </button>
          </li>
        ))}
      </ul>
      <ActNote acting={acting} />
      {deleting === undefined ? null : (
        <DeleteClinic
          clinic={deleting}
          onEnd={(said) => {
            setDeleting(undefined);
            acting.say(said);
          }}
        />
      )}
    </>
  );
};
