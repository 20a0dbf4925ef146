'use client';

import { useEffect, useRef, useState } from 'react';
import type { Settings } from '../../../lib/cohort/settings';
import type { ImportPlan } from '../../../lib/import/plan';
import { useFormatters, useMessages } from '../../_state/language-provider';
import { answerWords } from './answer-words';
import { answerSubject, withAnswer, withoutAnswer } from './answers';
import styles from './import-screen.module.css';
import { StackQuestionView } from './stack-question';
import { openQuestions } from './stack-questions';

interface QuestionStackProps {
  readonly plan: ImportPlan;
  readonly settings: Settings;
  readonly busy: boolean;
  readonly onSettings: (settings: Settings) => void;
}

const FEW = 5;

/** Questions about rows and people, one at a time; an answer can be changed until the files are kept, and later. */
export const QuestionStack = ({ plan, settings, busy, onSettings }: QuestionStackProps) => {
  const words = useMessages().importScreen.questions;
  const f = useFormatters();
  const [later, setLater] = useState<readonly string[]>([]);
  const heading = useRef<HTMLHeadingElement>(null);
  const open = openQuestions(plan, settings);
  const { answers } = settings;
  const present = open.find((question) => !later.includes(question.key)) ?? open[0];
  const presentKey = present?.key;
  const before = useRef(presentKey);
  useEffect(() => {
    if (before.current !== undefined && before.current !== presentKey) heading.current?.focus();
    before.current = presentKey;
  }, [presentKey]);
  if (open.length === 0 && answers.length === 0) return null;
  return (
    <section className="sheet" aria-labelledby="questions">
      <h2 id="questions" ref={heading} tabIndex={-1}>
        {words.title}
      </h2>
      {present === undefined ? (
        <p>{words.allAnswered}</p>
      ) : (
        <div className={styles.question}>
          <p className="quiet small" role="status">
            {words.progress({ at: answers.length + 1, of: answers.length + open.length })}
          </p>
          <StackQuestionView
            question={present.question}
            busy={busy}
            onAnswer={(answer) => {
              onSettings(withAnswer(settings, answer));
            }}
            onLater={
              open.length < 2
                ? undefined
                : () => {
                    setLater([...later.filter((key) => key !== present.key), present.key].slice(-(open.length - 1)));
                  }
            }
          />
        </div>
      )}
      {answers.length === 0 ? null : (
        <details className={styles.answeredList} open={answers.length <= FEW}>
          <summary>{words.answeredTitle}</summary>
          <ul className={styles.answered}>
            {answers.map((answer) => {
              const said = answerWords(answer, words, f);
              return (
                <li key={answerSubject(answer)}>
                  <bdi>{said}</bdi>
                  <button
                    type="button"
                    className="button"
                    disabled={busy}
                    aria-label={words.changeOf({ what: said })}
                    onClick={() => {
                      onSettings(withoutAnswer(settings, answer));
                    }}
                  >
                    {words.change}
                  </button>
                </li>
              );
            })}
          </ul>
        </details>
      )}
    </section>
  );
};
