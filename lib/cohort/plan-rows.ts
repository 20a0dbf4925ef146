import type { Cell } from '../engine/types';
import type { KeptEnrolment } from './settings-parts/enrolment-settings';
import type { ProgramSettings } from './settings-parts/program-settings';
import type { Settings } from './settings';

type Rows = readonly (readonly Cell[])[];

/** Whole days of a time in weeks. */
const days = (weeks: number): number => Math.round(7 * weeks);

/** Rows of `planned_reviews`. */
export const plannedReviewRows = (programs: readonly ProgramSettings[]): Rows =>
  programs.flatMap(({ name, reviews }) =>
    reviews.map(({ week, windowWeeks }) => [name, week, windowWeeks, days(week), days(windowWeeks)]),
  );

/** Rows of `planned_times`: planned visits and planned reviews of a program, one a day; a review brings its window. */
export const plannedTimeRows = (programs: readonly ProgramSettings[]): Rows =>
  programs.flatMap(({ name, plannedVisitWeeks, reviews }) => {
    const times = new Map<number, readonly Cell[]>();
    for (const week of plannedVisitWeeks) times.set(days(week), [name, week, days(week), null]);
    for (const { week, windowWeeks } of reviews) times.set(days(week), [name, week, days(week), days(windowWeeks)]);
    return [...times.values()];
  });

/** Rows of `expected_change`. */
export const expectedChangeRows = (programs: readonly ProgramSettings[]): Rows =>
  programs.flatMap(({ name, expectedChange }) =>
    expectedChange.map(({ measure, fromWeek, toWeek, perKgWeightChange, perMonth }) => [
      name,
      measure,
      days(fromWeek),
      toWeek === null ? null : days(toWeek),
      perKgWeightChange,
      perMonth,
    ]),
  );

/** What an enrolment is known by. */
export const enrolmentKey = ({ client, program, start }: Pick<KeptEnrolment, 'client' | 'program' | 'start'>): string =>
  JSON.stringify([client, program, start]);

/** Rows of `kept_enrolments`, under the id that a client has now; of two with one client, program and start the last. */
export const keptEnrolmentRows = ({ enrolments, answers }: Pick<Settings, 'enrolments' | 'answers'>): Rows => {
  const same = new Map(
    answers.flatMap((answer) =>
      answer.kind === 'same-client' ? answer.ids.map((id): [string, string] => [id, answer.client]) : [],
    ),
  );
  const kept = new Map<string, readonly Cell[]>();
  for (const entry of enrolments) {
    const client = same.get(entry.client) ?? entry.client;
    const { program, start, end, endReason } = entry;
    kept.set(enrolmentKey({ client, program, start }), [client, program, start, end, endReason]);
  }
  return [...kept.values()];
};
