'use client';

import { useState } from 'react';
import { ownRules } from '../../../lib/measures/own-rules';
import type { ComparabilityRule } from '../../../lib/measures/comparability-rule';
import { DEFAULT_RULES } from '../../../lib/measures/default-rules';
import { useMessages } from '../../_state/language-provider';
import type { Acting } from '../../_state/use-acting';
import { useSession } from '../../_state/workspace-provider';
import styles from './comparability-screen.module.css';
import { DEFAULT_DRAFTS, draftOf, rulesFrom, sameDraft, type RuleDraft } from './rule-draft';
import { RuleRow } from './rule-row';

const isAtVisits = ({ test }: ComparabilityRule): boolean => test.kind === 'below' || test.kind === 'is';

/** Every rule with its grade and limit; nothing changes before it is kept. */
export const RulesForm = ({ acting }: { readonly acting: Acting }) => {
  const messages = useMessages();
  const words = messages.comparability.rules;
  const { cohort, settings, keeping } = useSession();
  const kept = cohort.rules.map(draftOf);
  const [drafts, setDrafts] = useState<readonly RuleDraft[]>(kept);
  const [wrong, setWrong] = useState<string | undefined>(undefined);
  const draftFor = ({ id }: ComparabilityRule): RuleDraft | undefined => drafts.find((draft) => draft.id === id);
  const unsaved = drafts.filter(
    (draft) =>
      !sameDraft(
        draft,
        kept.find(({ id }) => id === draft.id),
      ),
  ).length;
  const edit = (next: RuleDraft): void => {
    setDrafts(drafts.map((draft) => (draft.id === next.id ? next : draft)));
    setWrong(undefined);
  };
  const save = (): void => {
    const read = rulesFrom(drafts);
    setWrong('wrong' in read ? words.wrongLimit({ condition: messages.reasons.condition[read.wrong] }) : undefined);
    if ('wrong' in read) return;
    void acting.start((workspace) => workspace.saveSettings({ ...settings, rules: ownRules(read.rules) }), words.saved);
  };
  const group = (title: string, rules: readonly ComparabilityRule[]) => (
    <>
      <h3>{title}</h3>
      <ul className={styles.rules} aria-label={title}>
        {rules.map((rule) => {
          const draft = draftFor(rule);
          return draft === undefined ? null : <RuleRow key={rule.id} rule={rule} draft={draft} onChange={edit} />;
        })}
      </ul>
    </>
  );
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        save();
      }}
    >
      <fieldset className={styles.writing} disabled={!keeping.writer || acting.busy}>
        {group(words.atVisits, DEFAULT_RULES.filter(isAtVisits))}
        {group(
          words.betweenVisits,
          DEFAULT_RULES.filter((rule) => !isAtVisits(rule)),
        )}
        <div className={`${styles.choices ?? ''} no-print`}>
          <button type="submit" className="button button-strong" disabled={unsaved === 0}>
            {words.save}
          </button>
          <button
            type="button"
            className="button"
            disabled={unsaved === 0}
            onClick={() => {
              setDrafts(kept);
              setWrong(undefined);
            }}
          >
            {words.discard}
          </button>
          <button
            type="button"
            className="button"
            onClick={() => {
              setDrafts(DEFAULT_DRAFTS);
              setWrong(undefined);
            }}
          >
            {words.resetAll}
          </button>
          <span className="quiet small" role="status">
            {unsaved === 0 ? '' : words.unsaved({ n: unsaved })}
          </span>
        </div>
      </fieldset>
      <p role="alert" className={styles.wrong}>
        {wrong}
      </p>
    </form>
  );
};
