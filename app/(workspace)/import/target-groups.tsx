'use client';

import { useState } from 'react';
import type { Mapping } from '../../../lib/import/mapping';
import type { ReadTable } from '../../../lib/import/plan';
import { completedMapping } from '../../../lib/workspace/completed-mapping';
import { withConstant, withFurtherReading, withReadingNumber, withReadingOf, withSource } from './mapping-edit';
import { targetGroups } from './mapping-view';
import { TargetGroupView } from './target-group';
import type { TargetEdits } from './target-edits';

interface TargetGroupsProps {
  readonly table: ReadTable;
  readonly mapping: Mapping;
  readonly questions: ReadTable['questions'];
  readonly onMapping: (mapping: Mapping) => void;
}

/** All canonical columns by role: those that the file fills, and the others behind a button. */
export const TargetGroups = ({ table, mapping, questions, onMapping }: TargetGroupsProps) => {
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
    <TargetGroupView
      key={group.role}
      group={group}
      table={table}
      questions={questions}
      touched={touched}
      edits={edits}
    />
  ));
};
