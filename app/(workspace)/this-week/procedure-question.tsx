'use client';

import { useId, useState, type FormEvent } from 'react';
import type { AppError } from '../../../lib/core/app-error';
import { parseIsoDate } from '../../../lib/core/iso-date';
import { useMessages } from '../../_state/language-provider';
import { useSession, useWorkspace } from '../../_state/workspace-provider';
import { LabelledSelect } from '../../_ui/labelled-select';
import { LabelledInput } from '../../_ui/labelled-input';
import { Failing } from '../../_ui/states';
import { procedureRules, type ProcedureRule } from './procedure-rules';
import styles from './procedure-question.module.css';

const EVERY_SITE = '';

/** The one question that files without condition columns leave open: is there a written procedure? */
export const ProcedureQuestion = () => {
  const messages = useMessages();
  const words = messages.thisWeek.question;
  const { settings, cohort } = useSession();
  const { run } = useWorkspace();
  const id = useId();
  const [site, setSite] = useState(EVERY_SITE);
  const [from, setFrom] = useState('');
  const [to, setTo] = useState('');
  const [initials, setInitials] = useState('');
  const [conditions, setConditions] = useState<readonly ProcedureRule[]>(procedureRules);
  const [problem, setProblem] = useState<string | undefined>(undefined);
  const [error, setError] = useState<AppError | undefined>(undefined);
  const [saving, setSaving] = useState(false);

  const declare = async (): Promise<void> => {
    setSaving(true);
    setError(undefined);
    const procedure = {
      site: site === EVERY_SITE ? null : site,
      from: parseIsoDate(from) ?? null,
      to: parseIsoDate(to) ?? null,
      conditions: [...conditions],
      initials: initials.trim(),
    };
    const next = { ...settings, procedures: [...settings.procedures, procedure] };
    setError(await run((workspace) => workspace.saveSettings(next)));
    setSaving(false);
  };
  const onSubmit = (event: FormEvent): void => {
    event.preventDefault();
    const missing =
      conditions.length === 0 ? words.needsCondition : initials.trim() === '' ? words.needsInitials : undefined;
    setProblem(missing);
    if (missing === undefined) void declare();
  };
  const toggle = (rule: ProcedureRule, chosen: boolean): void => {
    setConditions(procedureRules.filter((known) => (known === rule ? chosen : conditions.includes(known))));
  };

  return (
    <form className={`sheet no-print ${styles.question ?? ''}`} aria-labelledby={id} onSubmit={onSubmit}>
      <div>
        <h2 id={id}>{words.title}</h2>
        <p className={styles.why}>{words.why}</p>
      </div>
      <div className={styles.fields}>
        <LabelledSelect
          label={words.site}
          value={site}
          options={[
            { value: EVERY_SITE, label: words.everySite },
            ...cohort.summary.sites.map((name) => ({ value: name, label: name })),
          ]}
          onChange={setSite}
        />
        <LabelledInput label={words.from} type="date" value={from} onChange={setFrom} />
        <LabelledInput label={words.to} type="date" value={to} onChange={setTo} />
        <LabelledInput label={words.initials} type="text" value={initials} onChange={setInitials} maxLength={6} />
      </div>
      <fieldset className={styles.conditions}>
        <legend>{words.conditions}</legend>
        {procedureRules.map((rule) => (
          <label key={rule}>
            <input
              type="checkbox"
              checked={conditions.includes(rule)}
              onChange={(event) => {
                toggle(rule, event.target.checked);
              }}
            />{' '}
            {messages.reasons.condition[rule]}
          </label>
        ))}
      </fieldset>
      <div className={styles.actions}>
        <button type="submit" className="button button-strong" disabled={saving}>
          {saving ? words.declaring : words.declare}
        </button>
        <p className="small" role="alert">
          {problem}
        </p>
      </div>
      {error === undefined ? null : <Failing error={error} />}
      <p className="quiet small">{words.otherwise}</p>
    </form>
  );
};
