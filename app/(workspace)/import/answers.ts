import type { Answer, Settings } from '../../../lib/cohort/settings';

const sorted = (ids: readonly string[]): readonly string[] => [...ids].sort();

/** What an answer is about: two answers with one subject replace each other. */
export const answerSubject = (answer: Answer): string => {
  switch (answer.kind) {
    case 'far-off':
      return JSON.stringify([answer.kind, answer.client, answer.visitDate, answer.column, answer.value]);
    case 'same-client':
    case 'different-clients':
      return JSON.stringify(['ids', sorted(answer.ids)]);
    case 'reading':
      return JSON.stringify([answer.kind, answer.client, answer.visitDate, answer.key ?? '']);
    case 'baseline':
      return JSON.stringify([answer.kind, answer.client, answer.program, answer.start]);
    case 'sex-for-equations':
    case 'birth-date':
    case 'heights':
      return JSON.stringify([answer.kind, answer.client]);
  }
};

/** The settings with this answer; an earlier answer to the same question is replaced. */
export const withAnswer = (settings: Settings, answer: Answer): Settings => ({
  ...settings,
  answers: [...settings.answers.filter((one) => answerSubject(one) !== answerSubject(answer)), answer],
});

/** The settings without any answer to the question that this one answers. */
export const withoutAnswer = (settings: Settings, answer: Answer): Settings => ({
  ...settings,
  answers: settings.answers.filter((one) => answerSubject(one) !== answerSubject(answer)),
});
