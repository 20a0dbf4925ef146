'use client';

import { parseIsoDate } from '../../../lib/core/iso-date';
import type { ReadingQuestion } from '../../../lib/import/plan';
import { useFormatters, useMessages } from '../../_state/language-provider';
import { CellText } from './cell-text';
import { ChoiceButtons } from './choice-buttons';
import styles from './import-screen.module.css';
import mapping from './mapping-step.module.css';
import { ScrollRegion } from './scroll-region';
import type { AskProps } from './ask-props';

/** Two rows that describe one reading and differ: side by side, and which one counts. */
export const AskReading = ({ question, busy, onAnswer, later }: AskProps<ReadingQuestion>) => {
  const words = useMessages().importScreen.questions.reading;
  const f = useFormatters();
  const { client, visitDate, key, rows, differs } = question;
  const day = parseIsoDate(visitDate);
  const decisions = ['first', 'last', 'all'] as const;
  return (
    <>
      <p className={styles.asked}>
        <bdi>{words.ask({ client, date: day === undefined ? visitDate : f.date(day) })}</bdi>
      </p>
      <p>
        {words.why[question.kind]} <span className="quiet">{words.open}</span>
      </p>
      <ScrollRegion label={words.caption}>
        <table className={mapping.raw}>
          <caption className="visually-hidden">{words.caption}</caption>
          <thead>
            <tr>
              <th scope="col">{words.column}</th>
              {rows.map(({ row, file, line }) => (
                <th key={`${row.source} ${String(row.line)} ${String(row.part)}`} scope="col">
                  <bdi>{words.row({ file, line })}</bdi>
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {differs.map(({ column, cells }) => (
              <tr key={column}>
                <th scope="row">{column}</th>
                {rows.map(({ row }, index) => (
                  <td key={`${row.source} ${String(row.line)} ${String(row.part)}`}>
                    <CellText value={cells[index] ?? ''} />
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </ScrollRegion>
      <ChoiceButtons
        busy={busy}
        later={later}
        choices={decisions.map((decision) => ({
          key: decision,
          label: words[decision],
          onChoose: () => {
            onAnswer({ kind: 'reading', client, visitDate, key, decision });
          },
        }))}
      />
    </>
  );
};
