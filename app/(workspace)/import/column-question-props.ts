import type { ReactNode } from 'react';
import type { Mapping, MappingQuestion } from '../../../lib/import/mapping';
import type { WorkTable } from './import-work';

/** What every form of a question about a table's columns is given. */
export interface ColumnQuestionProps<Question = MappingQuestion> {
  readonly one: WorkTable;
  readonly question: Question;
  /** A button that puts the question off; nothing where it is the only one. */
  readonly later: ReactNode;
  /** The mapping with the answer. */
  readonly onMapping: (mapping: Mapping) => void;
}

/** The question of one kind. */
export type QuestionOf<Kind extends MappingQuestion['kind']> = Extract<MappingQuestion, { readonly kind: Kind }>;
