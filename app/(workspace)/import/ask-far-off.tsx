'use client';

import type { Answer } from '../../../lib/cohort/settings';
import { exportColumn } from '../../../lib/workspace/export-column';
import { SOURCE_UNITS } from '../../../lib/import/mapping';
import { useFormatters, useMessages } from '../../_state/language-provider';
import { CellText } from './cell-text';
import { ChoiceButtons } from './choice-buttons';
import styles from './import-screen.module.css';
import type { AskProps } from './ask-props';
import type { FarOffQuestion } from './stack-questions';

/** Whether a far-off value is what was measured. */
export const AskFarOff = ({ question, busy, onAnswer, later }: AskProps<FarOffQuestion>) => {
  const screen = useMessages().importScreen;
  const words = screen.questions.farOff;
  const f = useFormatters();
  const { client, visitDate, column, value, file, line, message } = question;
  const target = exportColumn(column);
  const unit = SOURCE_UNITS.find((one) => one !== '1' && one === target?.unit);
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
        {words.before({ measured: target?.type === 'number' })}
        <CellText value={value} />
        {words.after({
          name: screen.mapping.name({ column }),
          unit: unit === undefined ? '' : screen.mapping.units[unit],
        })}
      </p>
      <p>
        <bdi>{words.where({ client, date: f.date(visitDate), file, line })}</bdi> {message}
      </p>
      <p className="quiet">{words.consequence}</p>
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
