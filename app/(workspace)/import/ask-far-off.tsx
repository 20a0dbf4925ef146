'use client';

import type { Answer } from '../../../lib/cohort/settings';
import { useFormatters, useMessages } from '../../_state/language-provider';
import { CellText } from './cell-text';
import { ChoiceButtons } from './choice-buttons';
import styles from './import-screen.module.css';
import type { AskProps } from './ask-props';
import type { FarOffQuestion } from './stack-questions';

/** Whether a far-off value is what was measured. */
export const AskFarOff = ({ question, busy, onAnswer, later }: AskProps<FarOffQuestion>) => {
  const words = useMessages().importScreen.questions.farOff;
  const f = useFormatters();
  const { client, visitDate, column, value, file, line } = question;
  const answer = (decision: 'keep' | 'refuse'): Answer => ({
    kind: 'far-off',
    client,
    visitDate,
    column,
    value,
    decision,
  });
  return (
    <>
      <p className={styles.asked}>
        {words.before({ column })}
        <CellText value={value} />
        {words.after}
      </p>
      <p>
        <bdi>{words.where({ client, date: f.date(visitDate), file, line })}</bdi>{' '}
        <span className="quiet">{words.open}</span>
      </p>
      <ChoiceButtons
        busy={busy}
        later={later}
        choices={[
          {
            key: 'keep',
            label: words.keep,
            onChoose: () => {
              onAnswer(answer('keep'));
            },
          },
          {
            key: 'refuse',
            label: words.refuse,
            onChoose: () => {
              onAnswer(answer('refuse'));
            },
          },
        ]}
      />
    </>
  );
};
