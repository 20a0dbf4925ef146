'use client';

import { useId, useState, type ReactNode } from 'react';
import type { Procedure } from '../../../lib/cohort/settings';
import { parseIsoDate } from '../../../lib/core/iso-date';
import type { RuleId } from '../../../lib/measures/comparability-rule';
import { useMessages, usePreferences } from '../../_state/language-provider';
import { LabelledInput } from '../../_ui/labelled-input';
import { LabelledSelect } from '../../_ui/labelled-select';
import { ConditionChecks } from './condition-checks';
import styles from './import-screen.module.css';
import { procedureFault } from './procedure-conditions';

const EVERY_SITE = '';

interface ProcedureFormProps {
  readonly offered: readonly RuleId[];
  readonly sites: readonly string[];
  /** What the form starts from. */
  readonly initial: Pick<Procedure, 'site' | 'from' | 'to' | 'conditions'>;
  readonly busy: boolean;
  readonly submit: string;
  readonly onDeclare: (procedure: Procedure) => void;
  /** Further buttons beside the one that declares. */
  readonly others: ReactNode;
  /** The heading or question that names the form. */
  readonly labelledBy: string;
}

/** A written procedure: what it requires, where, from when to when, and who declares it. */
export const ProcedureForm = ({
  offered,
  sites,
  initial,
  busy,
  submit,
  onDeclare,
  others,
  labelledBy,
}: ProcedureFormProps) => {
  const words = useMessages().importScreen.procedure;
  const { preferences } = usePreferences();
  const wrongId = useId();
  const [conditions, setConditions] = useState<readonly RuleId[]>(initial.conditions);
  const [site, setSite] = useState(initial.site ?? EVERY_SITE);
  const [from, setFrom] = useState(initial.from ?? '');
  const [to, setTo] = useState(initial.to ?? '');
  const [initials, setInitials] = useState(preferences.initials);
  const [wrong, setWrong] = useState<string | undefined>(undefined);
  const known = [...new Set([...sites, ...(initial.site === null ? [] : [initial.site])])];
  const declare = (): void => {
    const procedure = {
      site: site === EVERY_SITE ? null : site,
      from: parseIsoDate(from) ?? null,
      to: parseIsoDate(to) ?? null,
      conditions: [...conditions],
      initials: initials.trim(),
    };
    const fault = procedureFault(procedure);
    setWrong(fault === undefined ? undefined : words[fault]);
    if (fault === undefined) onDeclare(procedure);
  };
  return (
    <form
      className={styles.question}
      aria-labelledby={labelledBy}
      onSubmit={(event) => {
        event.preventDefault();
        declare();
      }}
    >
      <ConditionChecks offered={offered} chosen={conditions} onChange={setConditions} />
      <div className={styles.fields}>
        {known.length === 0 ? null : (
          <LabelledSelect
            label={words.site}
            value={site}
            options={[
              { value: EVERY_SITE, label: words.everySite },
              ...known.map((name) => ({ value: name, label: name })),
            ]}
            onChange={setSite}
          />
        )}
        <LabelledInput label={words.from} type="date" value={from} onChange={setFrom} />
        <LabelledInput label={words.to} type="date" value={to} onChange={setTo} />
        <LabelledInput label={words.initials} type="text" value={initials} maxLength={12} onChange={setInitials} />
      </div>
      <p className="quiet small">{words.initialsNote}</p>
      <p id={wrongId} role="alert" className={wrong === undefined ? undefined : styles.wrong}>
        {wrong}
      </p>
      <div className={styles.buttons}>
        <button type="submit" className="button button-strong" disabled={busy}>
          {submit}
        </button>
        {others}
      </div>
    </form>
  );
};
