'use client';

import { useState } from 'react';
import type { Procedure, Settings } from '../../../lib/cohort/settings';
import type { IsoDate } from '../../../lib/core/iso-date';
import { useFormatters, useMessages } from '../../_state/language-provider';
import styles from './import-screen.module.css';
import { PROCEDURE_CONDITIONS } from './procedure-conditions';
import { ProcedureForm } from './procedure-form';

interface DeclaredProceduresProps {
  readonly settings: Settings;
  readonly sites: readonly string[];
  readonly busy: boolean;
  readonly onSettings: (settings: Settings) => void;
}

/** What was declared, each line to be changed or taken back; and for which sites there is no procedure. */
export const DeclaredProcedures = ({ settings, sites, busy, onSettings }: DeclaredProceduresProps) => {
  const words = useMessages().importScreen.procedure;
  const f = useFormatters();
  const [editing, setEditing] = useState<number | undefined>(undefined);
  const { procedures, withoutProcedure } = settings;
  const written = (procedure: Procedure): string =>
    words.declared({
      n: procedure.conditions.length,
      site: procedure.site,
      from: procedure.from === null ? null : f.date(procedure.from as IsoDate),
      to: procedure.to === null ? null : f.date(procedure.to as IsoDate),
      initials: procedure.initials,
    });
  return (
    <ul className={styles.answered} aria-label={words.declaredTitle}>
      {procedures.map((procedure, index) => (
        <li key={JSON.stringify([index, procedure])}>
          {editing === index ? (
            <ProcedureForm
              labelledBy="procedure"
              offered={PROCEDURE_CONDITIONS}
              sites={sites}
              initial={procedure}
              busy={busy}
              submit={words.keep}
              onDeclare={(next) => {
                setEditing(undefined);
                onSettings({ ...settings, procedures: procedures.with(index, next) });
              }}
              others={
                <button
                  type="button"
                  className="button"
                  onClick={() => {
                    setEditing(undefined);
                  }}
                >
                  {words.cancel}
                </button>
              }
            />
          ) : (
            <>
              <bdi>{written(procedure)}</bdi>
              <span className={styles.buttons}>
                <button
                  type="button"
                  className="button"
                  disabled={busy}
                  aria-label={words.editOf({ n: index + 1 })}
                  onClick={() => {
                    setEditing(index);
                  }}
                >
                  {words.edit}
                </button>
                <button
                  type="button"
                  className="button"
                  disabled={busy}
                  aria-label={words.removeOf({ n: index + 1 })}
                  onClick={() => {
                    onSettings({ ...settings, procedures: procedures.filter((_, place) => place !== index) });
                  }}
                >
                  {words.remove}
                </button>
              </span>
            </>
          )}
        </li>
      ))}
      {withoutProcedure.map(({ site }) => (
        <li key={site ?? ''}>
          <bdi>{words.withoutAnswered({ site })}</bdi>
          <button
            type="button"
            className="button"
            disabled={busy}
            onClick={() => {
              onSettings({ ...settings, withoutProcedure: withoutProcedure.filter((one) => one.site !== site) });
            }}
          >
            {words.change}
            <span className="visually-hidden">: {words.withoutAnswered({ site })}</span>
          </button>
        </li>
      ))}
    </ul>
  );
};
