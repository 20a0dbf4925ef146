'use client';

import { useState } from 'react';
import type { Settings } from '../../../lib/cohort/settings';
import type { ImportPlan } from '../../../lib/import/plan';
import { useMessages } from '../../_state/language-provider';
import { useValueWords } from '../../_state/use-value-words';
import { EnteredErrorFields } from './entered-error-fields';
import { enteredLines, enteredValues, errorSourceOf, type EnteredLine, type ErrorChoice } from './entered-errors';
import styles from './import-screen.module.css';
import { RadioList } from './radio-list';

const CHOICES: readonly ErrorChoice[] = ['own', 'entered', 'published', 'none'];

interface ErrorSourceSectionProps {
  readonly plan: ImportPlan;
  readonly settings: Settings;
  readonly busy: boolean;
  readonly onSettings: (settings: Settings) => void;
}

/** By which measurement error changes are judged: each choice with its consequence. */
export const ErrorSourceSection = ({ plan, settings, busy, onSettings }: ErrorSourceSectionProps) => {
  const words = useMessages().importScreen.errorSource;
  const valueWords = useValueWords();
  const { errorSource, leanMeasure } = settings;
  const [choice, setChoice] = useState<ErrorChoice>(errorSource.kind);
  const [lines, setLines] = useState<readonly EnteredLine[]>(() => enteredLines(errorSource, leanMeasure));
  const [wrong, setWrong] = useState<string | undefined>(undefined);
  const [kept, setKept] = useState(false);
  const consequence: Readonly<Record<ErrorChoice, string>> = {
    own: `${words.ownFound({ visits: plan.precisionVisits })} ${words.ownConsequence}`,
    entered: words.enteredConsequence,
    published: words.publishedConsequence,
    none: words.noneConsequence,
  };
  const keep = (): void => {
    const entered = enteredValues(lines);
    if (choice === 'entered' && !entered.ok) {
      const value = 'measure' in entered ? valueWords(entered.measure).title : '';
      setWrong(entered.fault === 'needsValue' ? words.needsValue : words[entered.fault]({ value }));
      return;
    }
    setWrong(undefined);
    setKept(true);
    onSettings({ ...settings, errorSource: errorSourceOf(choice, entered.ok ? entered.values : [], errorSource) });
  };
  return (
    <section className="sheet" aria-labelledby="error-source">
      <h2 id="error-source">{words.title}</h2>
      <form
        className={styles.question}
        onSubmit={(event) => {
          event.preventDefault();
          keep();
        }}
      >
        <p className={styles.asked}>{words.question}</p>
        <p className="quiet">{words.why}</p>
        <RadioList
          legend={words.choice}
          legendHidden
          value={choice}
          options={CHOICES.map((value) => ({
            value,
            label: (
              <>
                <span className="strong">{words[value]}.</span> <span>{consequence[value]}</span>
              </>
            ),
          }))}
          onChange={(next) => {
            setKept(false);
            setChoice(next);
          }}
        />
        {choice === 'entered' ? <EnteredErrorFields lines={lines} onLines={setLines} /> : null}
        <p role="alert" className={wrong === undefined ? undefined : styles.wrong}>
          {wrong}
        </p>
        <div className={styles.buttons}>
          <button type="submit" className="button button-strong" disabled={busy}>
            {words.keep}
          </button>
          <p role="status" className="quiet">
            {kept && !busy ? words.kept({ choice: words[errorSource.kind] }) : ''}
          </p>
        </div>
      </form>
    </section>
  );
};
