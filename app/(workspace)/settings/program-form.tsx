'use client';

import { useState, type FormEvent } from 'react';
import type { ProgramSettings } from '../../../lib/cohort/settings-parts/program-settings';
import { programProblemWords } from '../../../lib/core/messages/en/program-problems';
import { programProblems } from '../../../lib/workspace/program-problems';
import { useMessages } from '../../_state/language-provider';
import { capitalised } from '../../_ui/capitalised';
import { LabelledSelect } from '../../_ui/labelled-select';
import { ExpectedFields } from './expected-fields';
import { ProblemField } from './problem-field';
import { draftOf, EMPTY_DRAFT, type ProgramDraft } from './program-draft';
import styles from './program-form.module.css';
import { readProgram } from './read-program';

interface ProgramFormProps {
  /** Undefined for a new one. */
  readonly program: ProgramSettings | undefined;
  readonly others: readonly ProgramSettings[];
  readonly busy: boolean;
  readonly onSave: (program: ProgramSettings) => void;
  readonly onCancel: () => void;
  /** Undefined where there is nothing to remove. */
  readonly onRemove: (() => void) | undefined;
}

/** How one program is set, with what is wrong beside each field. */
export const ProgramForm = ({ program, others, busy, onSave, onCancel, onRemove }: ProgramFormProps) => {
  const { settingsPrograms: words } = useMessages();
  const [draft, setDraft] = useState<ProgramDraft>(program === undefined ? EMPTY_DRAFT : draftOf(program));
  const [tried, setTried] = useState(false);
  const { program: read, unreadable } = readProgram(draft);
  const found = programProblems(read, others);
  const blocked = unreadable.length > 0 || found.some(({ severity }) => severity === 'error');
  const set = (part: Partial<ProgramDraft>): void => {
    setDraft({ ...draft, ...part });
  };
  const isUnreadable = (field: string): boolean => unreadable.some((one) => one.field === field);
  const said = (field: string): readonly string[] =>
    found.filter((one) => one.field === field).map((one) => `${capitalised(programProblemWords(one))}.`);
  const isWrong = (field: string): boolean =>
    isUnreadable(field) || found.some((one) => one.field === field && one.severity === 'error');
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    setTried(true);
    if (!blocked && !busy) onSave(read);
  };
  const nameIsShown = tried || draft.name !== '';
  return (
    <form className={styles.form} onSubmit={submit} aria-label={program?.name ?? words.title.new}>
      <ProblemField
        label={words.name}
        value={draft.name}
        hint={words.nameHint}
        problems={nameIsShown ? said('name') : []}
        invalid={nameIsShown && isWrong('name')}
        onChange={(name) => {
          set({ name });
        }}
      />
      <ProblemField
        label={words.visits}
        value={draft.visits}
        hint={words.visitsHint}
        problems={isUnreadable('visits') ? [words.noNumbers] : said('visits')}
        invalid={isWrong('visits')}
        onChange={(visits) => {
          set({ visits });
        }}
      />
      <ProblemField
        label={words.reviews}
        value={draft.reviews}
        hint={words.reviewsHint}
        problems={isUnreadable('reviews') ? [words.noReviews] : said('reviews')}
        invalid={isWrong('reviews')}
        onChange={(reviews) => {
          set({ reviews });
        }}
      />
      <div className={styles.choices}>
        <LabelledSelect
          label={words.weight}
          value={draft.weight}
          options={(['none', 'loss', 'gain', 'neither'] as const).map((value) => ({
            value,
            label: words.weights[value],
          }))}
          onChange={(weight) => {
            set({ weight });
          }}
        />
        <LabelledSelect
          label={words.lean}
          value={draft.lean}
          options={(['none', 'up', 'hold'] as const).map((value) => ({ value, label: words.leans[value] }))}
          onChange={(lean) => {
            set({ lean });
          }}
        />
      </div>
      <p className="quiet small">{words.columnWins}</p>
      <ExpectedFields
        expected={draft.expected}
        onChange={(expected) => {
          set({ expected });
        }}
        problems={(place) => [
          ...(unreadable.some((one) => one.field === 'expected' && one.place === place) ? [words.noNumber] : []),
          ...(isUnreadable('expected') ? [] : found)
            .filter((one) => one.field === 'expected' && one.place === place)
            .map((one) => `${capitalised(programProblemWords(one))}.`),
        ]}
      />
      <div className="row">
        <button type="submit" className="button button-strong" disabled={busy}>
          {words.save}
        </button>
        <button type="button" className="button" onClick={onCancel}>
          {words.cancel}
        </button>
        {onRemove === undefined ? null : (
          <button type="button" className="button" disabled={busy} onClick={onRemove}>
            {words.removeProgram}
          </button>
        )}
      </div>
    </form>
  );
};
