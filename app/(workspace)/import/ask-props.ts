import type { ReactNode } from 'react';
import type { Answer } from '../../../lib/cohort/settings';

/** What every form of a question about a row or a person is given. */
export interface AskProps<Question> {
  readonly question: Question;
  readonly busy: boolean;
  readonly onAnswer: (answer: Answer) => void;
  /** Stands last among the buttons. */
  readonly later: ReactNode;
}
