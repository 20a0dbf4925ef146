import type { Answer } from '../../../lib/cohort/settings';
import type { Formatters } from '../../../lib/core/formatters';
import { parseIsoDate } from '../../../lib/core/iso-date';
import type { importStack } from '../../../lib/core/messages/en/import-stack';
import type { PersonQuestion } from '../../../lib/import/plan';

type OnePerson = Exclude<PersonQuestion, { readonly kind: 'similar-ids' }>;

export interface PersonChoice {
  readonly label: string;
  readonly answer: Answer;
}

/** The answers that a question about one person offers. A date or sex that cannot be stored is none. */
export const personChoices = (
  question: OnePerson,
  words: ReturnType<typeof importStack>,
  f: Formatters,
): readonly PersonChoice[] => {
  const { client } = question;
  switch (question.kind) {
    case 'birth-dates':
      return question.dates.flatMap(({ date, visits }) => {
        const day = parseIsoDate(date);
        if (day === undefined) return [];
        const label = words.birth.option({ date: f.date(day), visits });
        return [{ label, answer: { kind: 'birth-date', client, date } }];
      });
    case 'sexes':
      return question.sexes.flatMap(({ sex, visits }) => {
        if (sex === 'F') return [{ label: words.sexes.female({ visits }), answer: sexAnswer(client, sex) }];
        if (sex === 'M') return [{ label: words.sexes.male({ visits }), answer: sexAnswer(client, sex) }];
        return [];
      });
    case 'heights':
      return [{ label: words.heights.yes, answer: { kind: 'heights', client } }];
  }
};

const sexAnswer = (client: string, sex: 'F' | 'M'): Answer => ({ kind: 'sex-for-equations', client, sex });
