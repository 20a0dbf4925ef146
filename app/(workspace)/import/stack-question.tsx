'use client';

import type { Answer } from '../../../lib/cohort/settings';
import { useMessages } from '../../_state/language-provider';
import { AskFarOff } from './ask-far-off';
import { AskPerson } from './ask-person';
import { AskReading } from './ask-reading';
import { AskSameClient } from './ask-same-client';
import type { StackQuestion } from './stack-questions';

interface StackQuestionViewProps {
  readonly question: StackQuestion['question'];
  readonly busy: boolean;
  readonly onAnswer: (answer: Answer) => void;
  /** Undefined where it is the only one. */
  readonly onLater: (() => void) | undefined;
}

/** One question about a row or a person, by its kind. */
export const StackQuestionView = ({ question, busy, onAnswer, onLater }: StackQuestionViewProps) => {
  const words = useMessages().importScreen.questions;
  const later =
    onLater === undefined ? null : (
      <button type="button" className="button" onClick={onLater}>
        {words.later}
      </button>
    );
  const common = { busy, onAnswer, later };
  switch (question.kind) {
    case 'far-off':
      return <AskFarOff {...common} question={question} />;
    case 'similar-ids':
      return <AskSameClient {...common} question={question} />;
    case 'birth-dates':
    case 'sexes':
    case 'heights':
      return <AskPerson {...common} question={question} />;
    case 'same-figures':
    case 'same-number':
      return <AskReading {...common} question={question} />;
  }
};
