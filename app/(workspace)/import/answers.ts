import type { Answer, Settings } from '../../../lib/cohort/settings';

/** What an answer is about: two answers with one subject replace each other. */
const subject = (answer: Answer): string => {
  switch (answer.kind) {
    case 'far-off':
      return JSON.stringify([answer.kind, answer.client, answer.visitDate, answer.column, answer.value]);
    case 'same-client':
      return JSON.stringify([answer.kind, [...answer.ids].sort()]);
    default:
      return JSON.stringify([answer.kind, answer.client]);
  }
};

/** The settings with this answer; an earlier answer to the same question is replaced. */
export const withAnswer = (settings: Settings, answer: Answer): Settings => ({
  ...settings,
  answers: [...settings.answers.filter((one) => subject(one) !== subject(answer)), answer],
});

/** The settings without any answer to the question that this one answers. */
export const withoutAnswer = (settings: Settings, answer: Answer): Settings => ({
  ...settings,
  answers: settings.answers.filter((one) => subject(one) !== subject(answer)),
});
