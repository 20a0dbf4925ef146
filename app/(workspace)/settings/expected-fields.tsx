'use client';

import { useMessages } from '../../_state/language-provider';
import { useValueNames } from '../../_state/use-value-names';
import { useSession } from '../../_state/workspace-provider';
import { LabelledSelect } from '../../_ui/labelled-select';
import { ProblemField } from './problem-field';
import type { ExpectedDraft } from './program-draft';
import styles from './program-form.module.css';

interface ExpectedFieldsProps {
  readonly expected: readonly ExpectedDraft[];
  readonly onChange: (expected: readonly ExpectedDraft[]) => void;
  /** What is wrong with each, by its place. */
  readonly problems: (place: number) => readonly string[];
}

/** What a program lets expect, phase by phase. */
export const ExpectedFields = ({ expected, onChange, problems }: ExpectedFieldsProps) => {
  const { settingsPrograms: words } = useMessages();
  const { cohort } = useSession();
  const nameOf = useValueNames();
  const set = (place: number, part: Partial<ExpectedDraft>): void => {
    onChange(expected.map((phase, other) => (other === place ? { ...phase, ...part } : phase)));
  };
  return (
    <fieldset className={styles.expected}>
      <legend>{words.expected}</legend>
      <p className="quiet small">{words.expectedHint}</p>
      {expected.map((phase, place) => (
        <div key={place} className={styles.phase} role="group" aria-label={words.expectedOf({ n: place + 1 })}>
          <LabelledSelect
            label={words.value}
            value={phase.measure}
            options={[...new Set([phase.measure, ...cohort.listed])].map((value) => ({ value, label: nameOf(value) }))}
            onChange={(measure) => {
              set(place, { measure });
            }}
          />
          {(['fromWeek', 'toWeek', 'perKg', 'perMonth'] as const).map((part) => (
            <ProblemField
              key={part}
              label={words[part]}
              value={phase[part]}
              maxLength={8}
              onChange={(text) => {
                set(place, { [part]: text });
              }}
            />
          ))}
          <button
            type="button"
            className="button"
            aria-label={words.removeOf({ n: place + 1 })}
            onClick={() => {
              onChange(expected.filter((_, other) => other !== place));
            }}
          >
            {words.remove}
          </button>
          {problems(place).map((problem) => (
            <p key={problem} className={styles.wrong} role="alert">
              {problem}
            </p>
          ))}
        </div>
      ))}
      <button
        type="button"
        className="button"
        onClick={() => {
          onChange([...expected, { measure: cohort.lean, fromWeek: '', toWeek: '', perKg: '', perMonth: '' }]);
        }}
      >
        {words.addExpected}
      </button>
    </fieldset>
  );
};
