'use client';

import { useState } from 'react';
import type { Mapping } from '../../../lib/import/mapping';
import type { ReadTable } from '../../../lib/import/plan';
import { completedMapping } from '../../../lib/workspace/completed-mapping';
import { useMessages } from '../../_state/language-provider';
import { withConstant, withFurtherReading, withReadingNumber, withReadingOf, withSource } from './mapping-edit';
import styles from './mapping-step.module.css';
import { targetGroups, type TargetGroup } from './mapping-view';
import { TargetRow, type TargetEdits } from './target-row';

interface TargetGroupsProps {
  readonly table: ReadTable;
  readonly mapping: Mapping;
  readonly onMapping: (mapping: Mapping) => void;
}

/** All canonical columns by role: those that the file fills, and the others behind a button. */
export const TargetGroups = ({ table, mapping, onMapping }: TargetGroupsProps) => {
  // What was touched stays in sight, so that a field does not vanish under the hand that emptied it.
  const [touched, setTouched] = useState<readonly string[]>([]);
  const touch = (to: string, next: Mapping): void => {
    if (!touched.includes(to)) setTouched([...touched, to]);
    onMapping(next);
  };
  const edits: TargetEdits = {
    onSource: (key, from) => {
      touch(key.to, completedMapping(table, mapping, withSource(mapping, key, from)));
    },
    onRead: (key, change) => {
      onMapping(withReadingOf(mapping, key, change));
    },
    onReading: (key, reading) => {
      onMapping(withReadingNumber(mapping, key, reading));
    },
    onFurther: (to, place) => {
      onMapping(completedMapping(table, mapping, withFurtherReading(mapping, to, place)));
    },
    onConstant: (to, value) => {
      touch(to, withConstant(mapping, to, value));
    },
  };
  return targetGroups(table, mapping).map((group) => (
    <Group key={group.role} group={group} table={table} touched={touched} edits={edits} />
  ));
};

interface GroupProps {
  readonly group: TargetGroup;
  readonly table: ReadTable;
  readonly touched: readonly string[];
  readonly edits: TargetEdits;
}

const Group = ({ group, table, touched, edits }: GroupProps) => {
  const words = useMessages().importScreen.mapping;
  const [all, setAll] = useState(false);
  const role = words.roles[group.role];
  const hidden = group.empty.filter(({ name }) => !all && !touched.includes(name));
  const shown = group.rows.filter(
    ({ target, column, constant }) => column !== undefined || constant !== '' || !hidden.includes(target),
  );
  return (
    <section className={styles.group} aria-label={role}>
      <h4 className={styles.role}>{role}</h4>
      <ul>
        {shown.map(({ target, column, sureness, constant }, index) => (
          <TargetRow
            key={`${target.name} ${String(index - shown.findIndex((one) => one.target === target))}`}
            table={table}
            target={target}
            column={column}
            sureness={sureness}
            constant={constant}
            edits={edits}
          />
        ))}
      </ul>
      {group.empty.length === 0 || (hidden.length === 0 && !all) ? null : (
        <button
          type="button"
          className={styles.toggle}
          aria-expanded={all}
          onClick={() => {
            setAll(!all);
          }}
        >
          {all ? words.targets.fewer : words.targets.more({ n: hidden.length, role })}
        </button>
      )}
    </section>
  );
};
