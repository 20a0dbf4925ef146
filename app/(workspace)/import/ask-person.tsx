'use client';

import type { IsoDate } from '../../../lib/core/iso-date';
import type { PersonQuestion } from '../../../lib/import/plan';
import { useFormatters, useMessages } from '../../_state/language-provider';
import { ChoiceButtons } from './choice-buttons';
import styles from './import-screen.module.css';
import { personChoices } from './person-choices';
import type { AskProps } from './ask-props';

/** What one id holds twice: birth dates, sexes, heights. */
export const AskPerson = ({
  question,
  busy,
  onAnswer,
  later,
}: AskProps<Exclude<PersonQuestion, { readonly kind: 'similar-ids' }>>) => {
  const words = useMessages().importScreen.questions;
  const f = useFormatters();
  const { client } = question;
  const said = { 'birth-dates': words.birth, sexes: words.sexes, heights: words.heights }[question.kind];
  const ask =
    question.kind === 'heights'
      ? words.heights.ask({ client, median: f.height(question.medianCm) })
      : question.kind === 'sexes'
        ? words.sexes.ask({ client })
        : words.birth.ask({ client });
  return (
    <>
      <p className={styles.asked}>
        <bdi>{ask}</bdi>
      </p>
      <p>
        {said.why} <span className="quiet">{said.open}</span>
      </p>
      {question.kind === 'heights' ? (
        <ul className={styles.list}>
          {question.heights.map(({ cm, visits, firstDate }) => (
            <li key={`${String(cm)} ${firstDate}`}>
              {words.heights.option({ height: f.height(cm), visits, first: f.dateShort(firstDate as IsoDate) })}
            </li>
          ))}
        </ul>
      ) : null}
      <ChoiceButtons
        busy={busy}
        later={later}
        choices={personChoices(question, words, f).map(({ label, answer }) => ({
          key: label,
          label,
          onChoose: () => {
            onAnswer(answer);
          },
        }))}
      />
    </>
  );
};
