import type { MappingQuestion } from '../../../lib/import/mapping';

/** The name of a question about the columns: the same while it is open. */
export const columnQuestionKey = (question: MappingQuestion): string => {
  switch (question.kind) {
    case 'missing-column':
      return JSON.stringify([question.kind, question.to]);
    case 'several-columns':
      return JSON.stringify([question.kind, question.to]);
    case 'same-header':
      return JSON.stringify([question.kind, question.name, question.places]);
    case 'date-order':
    case 'decimal':
    case 'words':
    case 'unit':
      return JSON.stringify([question.kind, question.to, question.place]);
  }
};

const ORDER: readonly MappingQuestion['kind'][] = [
  'same-header',
  'several-columns',
  'missing-column',
  'date-order',
  'decimal',
  'unit',
  'words',
];

/** Which column comes before how it is read. */
export const inAskingOrder = (questions: readonly MappingQuestion[]): readonly MappingQuestion[] =>
  [...questions].sort((one, other) => ORDER.indexOf(one.kind) - ORDER.indexOf(other.kind));
