'use client';

import { useId } from 'react';
import { limitOf } from '../../../lib/measures/own-rules';
import type { ComparabilityRule, RuleGrade } from '../../../lib/measures/comparability-rule';
import { useMessages } from '../../_state/language-provider';
import styles from './comparability-screen.module.css';
import { draftOf, numberIn, sameDraft, type RuleDraft } from './rule-draft';

const GRADES: readonly RuleGrade[] = ['no', 'caution', 'note', 'off'];

interface RuleRowProps {
  /** The rule before a clinic edits it. */
  readonly rule: ComparabilityRule;
  readonly draft: RuleDraft;
  readonly onChange: (draft: RuleDraft) => void;
}

/** One rule in words, with its grade, its limit, its default and the way back to it. */
export const RuleRow = ({ rule, draft, onChange }: RuleRowProps) => {
  const messages = useMessages();
  const words = messages.comparability.rules;
  const [gradeId, limitId] = [useId(), useId()];
  const condition = messages.reasons.condition[rule.id];
  const unit = rule.test.kind === 'height-differs' ? 'cm' : 'h';
  const limit = limitOf(rule);
  const before = draftOf(rule);
  const chosen = draft.limit === undefined ? undefined : numberIn(draft.limit);
  const changed = !sameDraft(draft, before);
  const limitWords = limit === undefined ? null : words.limit({ limit, unit });
  return (
    <li className={styles.rule}>
      <div>
        <h4>{condition}</h4>
        <p>
          {words.broken[rule.id]({
            limit: chosen === undefined ? `… ${words.unit[unit]}` : words.limit({ limit: chosen, unit }),
          })}
        </p>
        <p className="print-only">
          {words.gradeShort}: {words.grade[draft.grade]}
        </p>
        <p className="quiet small">
          {words.byDefault({ grade: before.grade, limit: limitWords })}
          {changed ? <strong className={styles.changed}>{words.changed}</strong> : null}
        </p>
      </div>
      <div className={styles.controls}>
        <span className={styles.control}>
          <label htmlFor={gradeId}>
            {words.gradeShort}
            <span className="visually-hidden">: {condition}</span>
          </label>
          <select
            id={gradeId}
            value={draft.grade}
            onChange={(event) => {
              const grade = GRADES.find((known) => known === event.target.value);
              if (grade !== undefined) onChange({ ...draft, grade });
            }}
          >
            {GRADES.map((grade) => (
              <option key={grade} value={grade}>
                {words.grade[grade]}
              </option>
            ))}
          </select>
        </span>
        {draft.limit === undefined ? null : (
          <span className={styles.control}>
            <label htmlFor={limitId}>
              {words.limitShort({ unit: words.unit[unit] })}
              <span className="visually-hidden">: {condition}</span>
            </label>
            <input
              id={limitId}
              className={styles.limit}
              type="text"
              inputMode="decimal"
              autoComplete="off"
              value={draft.limit}
              onChange={(event) => {
                onChange({ ...draft, limit: event.target.value });
              }}
            />
          </span>
        )}
        {changed ? (
          <button
            type="button"
            className="button"
            aria-label={words.resetOf({ condition })}
            onClick={() => {
              onChange(before);
            }}
          >
            {words.reset}
          </button>
        ) : null}
      </div>
    </li>
  );
};
