'use client';

import type { StudyPlan } from '../../../lib/workspace/study-tools';
import { useMessages } from '../../_state/language-provider';
import styles from './repeatability-screen.module.css';

const COLUMNS = ['person', 'client', 'date', 'reading', 'r', 'xc', 'weight', 'height', 'initials'] as const;

/** An empty sheet to measure with: one line for each planned reading, numbered by person. */
export const StudySheet = ({ plan }: { readonly plan: StudyPlan }) => {
  const words = useMessages().studyPlanner;
  const { people, visits, readings } = plan;
  const lines = Array.from({ length: people * visits * readings }, (_, index) => ({
    key: String(index),
    person: Math.floor(index / (visits * readings)) + 1,
    first: index % (visits * readings) === 0,
    reading: (index % readings) + 1,
  }));
  return (
    <div className={styles.sheetPaper} role="group" aria-label={words.sheet}>
      <h3>{words.sheetTitle}</h3>
      <p>{words.sheetLead}</p>
      <table className={styles.sheetTable}>
        <caption>{words.sheetCaption(plan)}</caption>
        <thead>
          <tr>
            {COLUMNS.map((column) => (
              <th key={column} scope="col">
                {words.columns[column]}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {lines.map(({ key, person, first, reading }) => (
            <tr key={key} className={first ? styles.sheetFirst : undefined}>
              <td>{first ? person : ''}</td>
              <td />
              <td />
              <td>{reading}</td>
              <td />
              <td />
              <td />
              <td />
              <td />
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
};
