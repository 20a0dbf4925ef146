'use client';

import { useState, type FormEvent } from 'react';
import { LEAN_VALUES } from '../../../lib/measures/lean-values';
import type { Settings } from '../../../lib/cohort/settings';
import { useMessages } from '../../_state/language-provider';
import { useActing } from '../../_state/use-acting';
import { useValueNames } from '../../_state/use-value-names';
import { useSession } from '../../_state/workspace-provider';
import { ActNote } from '../../_ui/act-note';
import { LabelledInput } from '../../_ui/labelled-input';
import { LabelledSelect } from '../../_ui/labelled-select';
import styles from './settings-screen.module.css';
import { SettingsSection } from './settings-section';
import { typedNumber } from './typed-number';
import { WritingPart } from './writing-part';

const HIGHEST_PERCENT = 100;

/** The limit as typed, a comma for the point included; null for none, undefined where it is no percentage. */
const limitFrom = (text: string): number | null | undefined => {
  if (text.trim() === '') return null;
  const percent = typedNumber(text.replace(',', '.'));
  return percent !== undefined && percent > 0 && percent <= HIGHEST_PERCENT ? percent : undefined;
};

/** How many programs expect a change of some value, and none of this one. */
const expectingOthers = ({ programs, leanMeasure }: Settings): number =>
  programs.filter(
    ({ expectedChange }) => expectedChange.length > 0 && expectedChange.every(({ measure }) => measure !== leanMeasure),
  ).length;

/** The clinic's one value for lean tissue, and its limit for the lean share of a loss. */
export const LeanSection = () => {
  const { settingsLean: words } = useMessages();
  const { settings, cohort } = useSession();
  const nameOf = useValueNames();
  const acting = useActing();
  const [draft, setDraft] = useState<string | undefined>(undefined);
  const { leanShareLimitPercent, ...others } = settings;
  const kept = leanShareLimitPercent === undefined ? '' : String(leanShareLimitPercent);
  const limit = limitFrom(draft ?? kept);
  const { catalogue, lean, summary } = cohort;
  const followed = LEAN_VALUES.filter((id) => id === lean || catalogue.follows(id));
  const isForChange = summary.posture === 'standing' && catalogue.equations.ffm.posture === 'lying';
  const without = expectingOthers({ ...settings, leanMeasure: lean });
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    if (limit === undefined) return;
    const next = limit === null ? others : { ...others, leanShareLimitPercent: limit };
    void acting
      .start((workspace) => workspace.saveSettings(next), words.saved)
      .then((done) => {
        if (done) setDraft(undefined);
      });
  };
  return (
    <SettingsSection id="lean" lead={words.lead}>
      <WritingPart>
        <div className={styles.panel}>
          <LabelledSelect
            label={words.value}
            value={lean}
            options={followed.map((value) => ({ value, label: nameOf(value) }))}
            onChange={(leanMeasure) => {
              void acting.start((workspace) => workspace.saveSettings({ ...settings, leanMeasure }), words.saved);
            }}
          />
          {isForChange ? <p className="quiet small">{words.forChange}</p> : null}
          {without === 0 ? null : (
            <p className={styles.warning}>{words.expected({ programs: without, value: nameOf(lean) })}</p>
          )}
          <form className={styles.fields} onSubmit={submit}>
            <LabelledInput
              label={words.limit}
              type="text"
              inputMode="decimal"
              value={draft ?? kept}
              onChange={setDraft}
              maxLength={5}
            />
            <button type="submit" className="button" disabled={acting.busy || limit === undefined}>
              {words.limitSave}
            </button>
          </form>
          <p className="quiet small" role={limit === undefined ? 'alert' : undefined}>
            {limit === undefined ? words.limitWrong : words.limitHint}
          </p>
          <ActNote acting={acting} />
        </div>
      </WritingPart>
    </SettingsSection>
  );
};
