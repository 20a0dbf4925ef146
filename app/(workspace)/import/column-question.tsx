'use client';

import { AskColumn } from './ask-column';
import { AskDateOrder } from './ask-date-order';
import { AskDecimal } from './ask-decimal';
import { AskUnit } from './ask-unit';
import { AskWhich } from './ask-which';
import { AskWords } from './ask-words';
import type { ColumnQuestionProps } from './column-question-props';

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
