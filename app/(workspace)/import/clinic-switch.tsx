'use client';

import { useEffect, useState } from 'react';
import type { AppError } from '../../../lib/core/app-error';
import { useMessages } from '../../_state/language-provider';
import { openWorkspace } from '../../_state/open-workspace';
import { useSession, useWorkspace } from '../../_state/workspace-provider';
import { FilterLink } from '../../_ui/filter-link';
import { Failing } from '../../_ui/states';
import styles from './import-screen.module.css';

/** Which clinic is open, the demo with and without condition columns, and where other clinics are opened. */
export const ClinicSwitch = () => {
  const words = useMessages().importScreen.clinics;
  const session = useSession();
  const [hasOwn, setHasOwn] = useState(false);
  const { run } = useWorkspace();
  const [busy, setBusy] = useState(false);
  const [error, setError] = useState<AppError | undefined>(undefined);

  useEffect(() => {
    let current = true;
    const ask = async (): Promise<void> => {
      const kept = await (await openWorkspace()).clinics();
      if (current && kept.ok) setHasOwn(kept.value.some(({ kind }) => kind === 'own'));
    };
    ask().catch(() => undefined);
    return () => {
      current = false;
    };
  }, [session]);

  const open = async (withoutConditions: boolean): Promise<void> => {
    setBusy(true);
    setError(await run((workspace) => workspace.openDemo({ withoutConditions })));
    setBusy(false);
  };
  return (
    <section className={`sheet ${styles.clinics ?? ''} no-print`} aria-labelledby="clinics" aria-busy={busy}>
      <h2 id="clinics">{words.title}</h2>
      <p>
        <bdi>{words.open({ name: session.clinic.name })}</bdi>{' '}
        {hasOwn ? null : <span className="quiet small">{words.noOwn}</span>}
      </p>
      {[
        { label: words.demo, note: words.demoNote, withoutConditions: false },
        { label: words.demoPlain, note: words.demoPlainNote, withoutConditions: true },
      ].map(({ label, note, withoutConditions }) => (
        <div key={label} className={styles.clinic}>
          <button type="button" className="button" disabled={busy} onClick={() => void open(withoutConditions)}>
            {label}
          </button>
          <span className="quiet small">{note}</span>
        </div>
      ))}
      <p>
        <FilterLink href="/settings/">{words.settings}</FilterLink>
      </p>
      {error === undefined ? null : <Failing error={error} />}
    </section>
  );
};
