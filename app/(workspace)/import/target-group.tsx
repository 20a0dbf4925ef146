'use client';

import { useState } from 'react';
import type { MappingQuestion } from '../../../lib/import/mapping';
import type { ReadTable } from '../../../lib/import/plan';
import { useMessages } from '../../_state/language-provider';
import styles from './mapping-step.module.css';
import type { TargetGroup } from './mapping-view';
import type { TargetEdits } from './target-edits';
import { TargetRow } from './target-row';

interface TargetGroupViewProps {
  readonly group: TargetGroup;
  readonly table: ReadTable;
  readonly questions: ReadTable['questions'];
  /** Targets that stay in sight although nothing fills them. */
  readonly touched: readonly string[];
  readonly edits: TargetEdits;
}

const askedAbout = (questions: ReadTable['questions'], to: string, place: number | undefined) =>
  new Set(
    questions.flatMap((question): readonly MappingQuestion['kind'][] =>
      'place' in question && question.to === to && question.place === place ? [question.kind] : [],
    ),
  );

/** The canonical columns of one role: those that the file fills, and the others behind a button. */
export const TargetGroupView = ({ group, table, questions, touched, edits }: TargetGroupViewProps) => {
  const words = useMessages().importScreen.mapping;
  const [all, setAll] = useState(false);
  const role = words.roles[group.role];
  const hidden = group.empty.filter(({ name, required }) => !all && !required && !touched.includes(name));
  const shown = group.rows.filter(
    ({ target, column, constant }) => column !== undefined || constant !== '' || !hidden.includes(target),
  );
  return (
    <section className={styles.group} aria-label={role}>
      <div className={styles.head}>
        <h4 className={styles.role}>{role}</h4>
        {group.empty.length === 0 || (hidden.length === 0 && !all) ? null : (
          <button
            type="button"
            className={styles.toggle}
            aria-expanded={all}
            onClick={() => {
              setAll(!all);
            }}
          >
            {all ? words.targets.fewer : words.targets.more({ n: hidden.length })}
            <span className="visually-hidden">: {role}</span>
          </button>
        )}
      </div>
      <ul>
        {shown.map(({ target, column, sureness, constant }, index) => (
          <TargetRow
            key={`${target.name} ${String(index - shown.findIndex((one) => one.target === target))}`}
            table={table}
            target={target}
            column={column}
            sureness={sureness}
            constant={constant}
            asked={askedAbout(questions, target.name, column?.from[0])}
            edits={edits}
          />
        ))}
      </ul>
    </section>
  );
};
