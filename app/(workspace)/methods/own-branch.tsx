'use client';

import type { Regressor } from '../../../lib/measures/equation';
import { useMessages } from '../../_state/language-provider';
import { LabelledSelect } from '../../_ui/labelled-select';
import type { BranchDraft, OwnField as OwnFieldName, TermDraft } from './own-draft';
import { OwnField } from './own-field';
import styles from './methods-screen.module.css';

interface OwnBranchProps {
  readonly title: string;
  readonly branch: BranchDraft;
  /** What the quantity's equation may read. */
  readonly regressors: readonly Regressor[];
  readonly problems: ReadonlySet<OwnFieldName>;
  readonly onChange: (branch: BranchDraft) => void;
}

/** The terms of one form: coefficient times regressor, and the constant. */
export const OwnBranch = ({ title, branch, regressors, problems, onChange }: OwnBranchProps) => {
  const words = useMessages().methodsOwn;
  const { terms } = branch;
  const change = (place: number, patch: Partial<TermDraft>): void => {
    onChange({ ...branch, terms: terms.map((term, at) => (at === place ? { ...term, ...patch } : term)) });
  };
  const add = (): void => {
    const free = regressors.find((regressor) => terms.every((term) => term.regressor !== regressor));
    if (free !== undefined) onChange({ ...branch, terms: [...terms, { coefficient: '', regressor: free }] });
  };
  return (
    <fieldset className={styles.branch}>
      <legend>{title}</legend>
      <OwnField
        label={words.intercept}
        value={branch.intercept}
        field="intercept"
        problems={problems}
        inputMode="decimal"
        size="short"
        onChange={(intercept) => {
          onChange({ ...branch, intercept });
        }}
      />
      <ul className={styles.terms}>
        {terms.map((term, place) => (
          <li key={place}>
            <OwnField
              label={words.coefficient}
              value={term.coefficient}
              field="coefficient"
              problems={problems}
              inputMode="decimal"
              size="short"
              onChange={(coefficient) => {
                change(place, { coefficient });
              }}
            />
            <LabelledSelect
              label={words.regressor}
              value={term.regressor}
              options={[...new Set([...regressors, term.regressor])].map((value) => ({
                value,
                label: words.regressors[value],
              }))}
              onChange={(regressor) => {
                change(place, { regressor });
              }}
            />
            {terms.length < 2 ? null : (
              <button
                type="button"
                className="button"
                onClick={() => {
                  onChange({ ...branch, terms: terms.filter((_, at) => at !== place) });
                }}
              >
                {words.removeTerm({ term: words.regressors[term.regressor] })}
              </button>
            )}
          </li>
        ))}
      </ul>
      {problems.has('terms') ? <p className={styles.problem}>{words.problem.terms}</p> : null}
      <button type="button" className="button" onClick={add} disabled={terms.length === regressors.length}>
        {words.addTerm}
      </button>
    </fieldset>
  );
};
