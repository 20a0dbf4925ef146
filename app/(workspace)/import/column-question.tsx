'use client';

import type { ReactNode } from 'react';
import type { Mapping, MappingQuestion } from '../../../lib/import/mapping';
import { AskColumn } from './ask-column';
import { AskDateOrder } from './ask-date-order';
import { AskDecimal } from './ask-decimal';
import { AskUnit } from './ask-unit';
import { AskWhich } from './ask-which';
import { AskWords } from './ask-words';
import type { WorkTable } from './import-work';

export interface ColumnQuestionProps<Question = MappingQuestion> {
  readonly one: WorkTable;
  readonly question: Question;
  /** A button that puts the question off; nothing where it is the only one. */
  readonly later: ReactNode;
  /** The mapping with the answer. */
  readonly onMapping: (mapping: Mapping) => void;
}

/** One question about the columns of a table, by its kind. */
export const ColumnQuestion = ({ one, question, later, onMapping }: ColumnQuestionProps) => {
  const common = { one, later, onMapping };
  switch (question.kind) {
    case 'missing-column':
      return <AskColumn {...common} question={question} />;
    case 'date-order':
      return <AskDateOrder {...common} question={question} />;
    case 'decimal':
      return <AskDecimal {...common} question={question} />;
    case 'words':
      return <AskWords {...common} question={question} />;
    case 'unit':
      return <AskUnit {...common} question={question} />;
    case 'several-columns':
    case 'same-header':
      return <AskWhich {...common} question={question} />;
  }
};

export type QuestionOf<Kind extends MappingQuestion['kind']> = Extract<MappingQuestion, { readonly kind: Kind }>;
