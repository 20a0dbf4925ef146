import type { Answer } from '../cohort/settings';
import type { ClinicState } from './clinic-state';

const names = (answer: Answer, isGone: (id: string) => boolean): boolean =>
  ('client' in answer && isGone(answer.client)) || ('ids' in answer && answer.ids.some((id) => isGone(id)));

/** A state without what was said of erased people; its files, and what was said of their rows, are another matter. */
export const stateWithout = (state: ClinicState, isGone: (clientId: string) => boolean): ClinicState => ({
  ...state,
  settings: {
    ...state.settings,
    answers: state.settings.answers.filter((answer) => !names(answer, isGone)),
    enrolments: state.settings.enrolments.filter(({ client }) => !isGone(client)),
  },
  notes: state.notes.filter((note) => !isGone(note.client)),
  marks: state.marks.filter((mark) => !isGone(mark.client)),
  corrections: state.corrections.filter(
    ({ column, from, to }) => column !== 'client_id' || !(isGone(from) || isGone(to)),
  ),
});
