'use client';

import { useState } from 'react';
import { declareProcedure } from '../../../lib/workspace/procedure-answers';
import type { Procedure, Settings } from '../../../lib/cohort/settings';
import type { IsoDate } from '../../../lib/core/iso-date';
import type { MissingConditions } from '../../../lib/import/plan';
import { useFormatters, useMessages } from '../../_state/language-provider';
import styles from './import-screen.module.css';
import { conditionsOf, PROCEDURE_CONDITIONS } from './procedure-conditions';
import { ProcedureForm } from './procedure-form';

interface DeclaredProceduresProps {
  readonly settings: Settings;
  /** Conditions that the files leave open, and the declaration that leaves them out. */
  readonly missing: readonly MissingConditions[];
  readonly sites: readonly string[];
  readonly busy: boolean;
  /** `by`: initials that were given with the answer. */
  readonly onSettings: (settings: Settings, by?: string) => void;
}

/** What was declared, each line to be changed or taken back; and for which sites there is no procedure. */
export const DeclaredProcedures = ({ settings, missing, sites, busy, onSettings }: DeclaredProceduresProps) => {
  const words = useMessages().importScreen.procedure;
  const f = useFormatters();
  const [editing, setEditing] = useState<number | undefined>(undefined);
  const { procedures, withoutProcedure } = settings;
  const date = (day: string | null): string | null => (day === null ? null : f.date(day as IsoDate));
  const leftOut = (place: number): readonly string[] =>
    conditionsOf(missing.flatMap(({ declaredBy, columns }) => (declaredBy === place ? columns : []))).map(
      (id) => words.condition[id] ?? id,
    );
  const written = (procedure: Procedure): string =>
    words.declared({
      n: procedure.conditions.length,
      site: procedure.site,
      from: date(procedure.from),
      to: date(procedure.to),
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
                onSettings(declareProcedure(settings, next, index), next.initials);
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
              <div>
                <bdi>{written(procedure)}</bdi>
                {leftOut(index).length === 0 ? null : (
                  <p className="quiet small measure">
                    {words.leftOut({ conditions: leftOut(index) })}{' '}
                    <button
                      type="button"
                      className={styles.inText}
                      disabled={busy}
                      onClick={() => {
                        setEditing(index);
                      }}
                    >
                      {words.addLeftOut}
                    </button>
                  </p>
                )}
              </div>
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
      {withoutProcedure.map((denied) => {
        const { site, from, to } = denied;
        const said = words.withoutAnswered({ site, from: date(from), to: date(to), sites: sites.length > 0 });
        return (
          <li key={JSON.stringify(denied)}>
            <bdi>{said}</bdi>
            <button
              type="button"
              className="button"
              disabled={busy}
              onClick={() => {
                onSettings({ ...settings, withoutProcedure: withoutProcedure.filter((one) => one !== denied) });
              }}
            >
              {words.change}
              <span className="visually-hidden">: {said}</span>
            </button>
          </li>
        );
      })}
    </ul>
  );
};
