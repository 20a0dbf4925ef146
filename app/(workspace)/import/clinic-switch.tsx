'use client';

import { useEffect, useState } from 'react';
import type { AppError } from '../../../lib/core/app-error';
import { useMessages } from '../../_state/language-provider';
import { openWorkspace } from '../../_state/open-workspace';
import { useSession, useWorkspace } from '../../_state/workspace-provider';
import { Failing } from '../../_ui/states';
import styles from './import-screen.module.css';

/** Which clinic is open: the demo, the demo without condition columns, or the own one where there is one. */
export const ClinicSwitch = () => {
  const words = useMessages().importScreen.clinics;
  const session = useSession();
  const { run } = useWorkspace();
  const [hasOwn, setHasOwn] = useState(false);
  const [busy, setBusy] = useState(false);
  const [error, setError] = useState<AppError | undefined>(undefined);
  const { id, name } = session.clinic;

  useEffect(() => {
    let current = true;
    const ask = async (): Promise<void> => {
      const kept = await (await openWorkspace()).hasOwn();
      if (current) setHasOwn(kept);
    };
    void ask();
    return () => {
      current = false;
    };
  }, [session]);

  const act = async (action: Parameters<typeof run>[0]): Promise<void> => {
    setBusy(true);
    setError(await run(action));
    setBusy(false);
  };
  return (
    <section className={`sheet ${styles.clinics ?? ''} no-print`} aria-labelledby="clinics" aria-busy={busy}>
      <h2 id="clinics">{words.title}</h2>
      <p>
        <bdi>{words.open({ name })}</bdi>
      </p>
      <div className={styles.clinic}>
        <button
          type="button"
          className="button"
          disabled={busy}
          onClick={() => void act((workspace) => workspace.switchTo('demo'))}
        >
          {words.demo}
        </button>
        <span className="quiet small">{words.demoNote}</span>
      </div>
      <div className={styles.clinic}>
        <button
          type="button"
          className="button"
          disabled={busy}
          onClick={() => void act((workspace) => workspace.openDemoWithoutConditions())}
        >
          {words.demoPlain}
        </button>
        <span className="quiet small">{words.demoPlainNote}</span>
      </div>
      <div className={styles.clinic}>
        {hasOwn && id !== 'own' ? (
          <button
            type="button"
            className="button"
            disabled={busy}
            onClick={() => void act((workspace) => workspace.switchTo('own'))}
          >
            {words.own}
          </button>
        ) : null}
        {hasOwn ? null : <span className="quiet small">{words.noOwn}</span>}
      </div>
      {error === undefined ? null : <Failing error={error} />}
    </section>
  );
};
