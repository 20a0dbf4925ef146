'use client';

import { useEffect, useId, useState } from 'react';
import { useMessages } from '../_state/language-provider';
import { openWorkspace } from '../_state/open-workspace';
import { useActing } from '../_state/use-acting';
import { useClinics } from '../_state/use-clinics';
import { ActNote } from './act-note';
import styles from './gate-screen.module.css';

type Damaged = readonly { readonly importId: string; readonly file: string }[];

/** The imports that keep the clinic from opening. */
const useDamaged = (asked: boolean): Damaged => {
  const [damaged, setDamaged] = useState<Damaged>([]);
  useEffect(() => {
    if (!asked) return;
    let current = true;
    const ask = async (): Promise<void> => {
      const found = await (await openWorkspace()).damagedImports();
      if (current) setDamaged(found);
    };
    ask().catch(() => undefined);
    return () => {
      current = false;
    };
  }, [asked]);
  return damaged;
};

/** Ways on where the clinic does not open: without a damaged file, a step back, another clinic, the demo. */
export const GateWays = ({ code }: { readonly code: string }) => {
  const messages = useMessages();
  const words = messages.shell;
  const acting = useActing();
  const titleId = useId();
  const clinics = useClinics() ?? [];
  const damaged = useDamaged(code === 'file_missing');
  return (
    <>
      {damaged.length === 0 && code !== 'empty_clinic' ? null : (
        <div className="row">
          {damaged.map(({ importId, file }) => (
            <button
              key={`${importId} ${file}`}
              type="button"
              className="button"
              disabled={acting.busy}
              onClick={() => void acting.start((workspace) => workspace.removeImport(importId))}
            >
              <bdi>{words.withoutImport({ file })}</bdi>
            </button>
          ))}
          {code === 'empty_clinic' ? (
            <button
              type="button"
              className="button"
              disabled={acting.busy}
              onClick={() => void acting.start((workspace) => workspace.undo())}
            >
              {words.undoLast}
            </button>
          ) : null}
        </div>
      )}
      <section aria-labelledby={titleId}>
        <h2 id={titleId}>{words.otherClinics}</h2>
        <ul className={styles.ways}>
          {clinics.map(({ id, name }) => (
            <li key={id}>
              <button
                type="button"
                className="button"
                disabled={acting.busy}
                onClick={() => void acting.start((workspace) => workspace.switchTo(id))}
              >
                <bdi>{messages.settings.clinics.openNamed({ name })}</bdi>
              </button>
            </li>
          ))}
          {clinics.some(({ kind }) => kind === 'demo') ? null : (
            <li>
              <button
                type="button"
                className="button"
                disabled={acting.busy}
                onClick={() => void acting.start((workspace) => workspace.openDemo())}
              >
                {words.openDemo}
              </button>
            </li>
          )}
        </ul>
      </section>
      <ActNote acting={acting} />
    </>
  );
};
