'use client';

import { useEffect, useRef, useState } from 'react';
import type { Settings } from '../../../lib/cohort/settings';
import type { IsoDate } from '../../../lib/core/iso-date';
import type { ImportPlan } from '../../../lib/import/plan';
import { useFormatters, useMessages } from '../../_state/language-provider';
import { withAnswer, withoutAnswer } from './answers';
import { CellText } from './cell-text';
import styles from './import-screen.module.css';
import { farOffAnswers, openQuestions, questionKey } from './open-questions';

interface QuestionsProps {
  readonly plan: ImportPlan;
  readonly settings: Settings;
  readonly busy: boolean;
  readonly onSettings: (settings: Settings) => void;
}

/** Far-off values, one question at a time; an answer can be changed until the files are kept, and later. */
export const Questions = ({ plan, settings, busy, onSettings }: QuestionsProps) => {
  const words = useMessages().importScreen.questions;
  const f = useFormatters();
  const [later, setLater] = useState<readonly string[]>([]);
  const heading = useRef<HTMLHeadingElement>(null);
  const open = openQuestions(plan.findings, settings);
  const answered = farOffAnswers(settings);
  const present = open.find((question) => !later.includes(question.key)) ?? open[0];
  const presentKey = present?.key;
  const before = useRef(presentKey);
  useEffect(() => {
    if (before.current !== undefined && before.current !== presentKey) heading.current?.focus();
    before.current = presentKey;
  }, [presentKey]);
  if (open.length === 0 && answered.length === 0) return null;

  const answer = (decision: 'keep' | 'refuse'): void => {
    if (present === undefined) return;
    const { client, visitDate, column, value } = present;
    onSettings(withAnswer(settings, { kind: 'far-off', client, visitDate, column, value, decision }));
  };
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
            {words.progress({ at: answered.length + 1, of: answered.length + open.length })}
          </p>
          <p className={styles.asked}>
            {words.farOffBefore({ column: present.column })}
            <CellText value={present.value} />
            {words.farOffAfter}
          </p>
          <p>
            <bdi>
              {words.where({
                client: present.client,
                date: f.date(present.visitDate),
                file: present.file,
                line: present.line,
              })}
            </bdi>{' '}
            <span className="quiet">{words.open}</span>
          </p>
          <div className={styles.buttons}>
            <button
              type="button"
              className="button"
              disabled={busy}
              onClick={() => {
                answer('keep');
              }}
            >
              {words.keep}
            </button>
            <button
              type="button"
              className="button"
              disabled={busy}
              onClick={() => {
                answer('refuse');
              }}
            >
              {words.refuse}
            </button>
            {open.length < 2 ? null : (
              <button
                type="button"
                className="button"
                onClick={() => {
                  setLater([...later.filter((key) => key !== present.key), present.key].slice(-(open.length - 1)));
                }}
              >
                {words.later}
              </button>
            )}
          </div>
        </div>
      )}
      {answered.length === 0 ? null : (
        <ul className={styles.answered}>
          {answered.map((one) => (
            <li key={questionKey(one)}>
              <span>
                <bdi>{one.client}</bdi>, {f.dateShort(one.visitDate as IsoDate)}, {one.column}{' '}
                <CellText value={one.value} />. {one.decision === 'keep' ? words.kept : words.refused}
              </span>
              <button
                type="button"
                className="button"
                disabled={busy}
                onClick={() => {
                  onSettings(withoutAnswer(settings, one));
                }}
              >
                {words.change}
              </button>
            </li>
          ))}
        </ul>
      )}
    </section>
  );
};
