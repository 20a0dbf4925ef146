'use client';

import { useState, type FormEvent } from 'react';
import type { Equation } from '../../../lib/measures/equation';
import { useMessages } from '../../_state/language-provider';
import { LabelledSelect } from '../../_ui/labelled-select';
import { SegmentedChoice } from '../../_ui/segmented-choice';
import { judgeDraft, previewFrom } from './judge-draft';
import styles from './methods-screen.module.css';
import { OwnBranch } from './own-branch';
import type { OwnDraft, OwnField as OwnFieldName } from './own-draft';
import { OwnField } from './own-field';
import { OwnPreview } from './own-preview';
import { OwnSource } from './own-source';
import { QUANTITIES } from '../../../lib/measures/equation';
import { regressorsFor, UNITS_OF } from '../../../lib/measures/own-equation';

interface OwnFormProps {
  readonly draft: OwnDraft;
  readonly onDraft: (draft: OwnDraft) => void;
  /** Ids of the clinic's other equations. */
  readonly taken: readonly string[];
  readonly busy: boolean;
  readonly onSave: (equation: Equation) => void;
  readonly onClose: () => void;
}

const NONE: ReadonlySet<OwnFieldName> = new Set();

/** The form of an own equation; what is not complete is said at its field once saving was tried. */
export const OwnForm = ({ draft, onDraft, taken, busy, onSave, onClose }: OwnFormProps) => {
  const messages = useMessages();
  const words = messages.methodsOwn;
  const [tried, setTried] = useState(false);
  const judged = judgeDraft(draft, taken, words.note);
  const problems = tried ? judged.problems : NONE;
  const preview = previewFrom(draft, words.note);
  const set = (patch: Partial<OwnDraft>): void => {
    onDraft({ ...draft, ...patch });
  };
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    setTried(true);
    if (judged.equation !== undefined) onSave(judged.equation);
  };
  return (
    <form className={styles.form} onSubmit={submit} noValidate>
      <fieldset className={styles.group}>
        <legend>{words.groups.what}</legend>
        <OwnField
          label={words.name}
          value={draft.name}
          field="name"
          problems={problems}
          onChange={(name) => {
            set({ name });
          }}
        />
        <LabelledSelect
          label={words.quantity}
          value={draft.quantity}
          options={QUANTITIES.map((value) => ({ value, label: messages.methods.quantity[value] }))}
          onChange={(quantity) => {
            set({ quantity, unit: UNITS_OF[quantity][0] ?? draft.unit });
          }}
        />
        <LabelledSelect
          label={words.unit}
          value={draft.unit}
          options={UNITS_OF[draft.quantity].map((value) => ({ value, label: value }))}
          onChange={(unit) => {
            set({ unit });
          }}
        />
      </fieldset>
      <fieldset className={styles.group}>
        <legend>{words.groups.formula}</legend>
        <SegmentedChoice
          label={words.form}
          value={draft.form}
          options={(['one', 'sexes'] as const).map((value) => ({ value, label: words.forms[value] }))}
          onChange={(form) => {
            set({ form });
          }}
        />
        <SegmentedChoice
          label={words.sexCoding}
          value={draft.sexCoding}
          options={(['men', 'women'] as const).map((value) => ({ value, label: words.sexCodings[value] }))}
          onChange={(sexCoding) => {
            set({ sexCoding });
          }}
        />
        {(draft.form === 'one' ? (['all'] as const) : (['F', 'M'] as const)).map((which) => (
          <OwnBranch
            key={which}
            title={words.branch[which]}
            branch={draft[which]}
            regressors={regressorsFor(draft.quantity)}
            problems={problems}
            onChange={(branch) => {
              set({ [which]: branch });
            }}
          />
        ))}
      </fieldset>
      <OwnSource draft={draft} problems={problems} set={set} />
      <div className={styles.preview} role="group" aria-label={words.preview}>
        <h3>{words.preview}</h3>
        {preview === undefined ? <p className="quiet">{words.previewNone}</p> : <OwnPreview equation={preview} />}
      </div>
      {problems.size === 0 ? null : <p role="alert">{words.problems({ n: problems.size })}</p>}
      <div className="row">
        <button type="submit" className="button button-strong" disabled={busy}>
          {words.save({ version: draft.keptVersion + 1 })}
        </button>
        <button type="button" className="button" onClick={onClose}>
          {words.close}
        </button>
      </div>
    </form>
  );
};
