import type { ProgramSettings } from '../cohort/settings-parts/program-settings';

/** What is wrong with how a program is set (`error`: it cannot be kept), or has to be known (`note`). */
export type ProgramProblem = { readonly severity: 'error' | 'note' } & (
  | { readonly field: 'name'; readonly code: 'name-missing' | 'name-taken' }
  | { readonly field: 'visits'; readonly code: 'visits-not-in-order' }
  | { readonly field: 'reviews'; readonly code: 'reviews-not-in-order' }
  | {
      readonly field: 'reviews';
      readonly code: 'window-reaches-baseline';
      readonly week: number;
      readonly from: number;
    }
  | { readonly field: 'reviews'; readonly code: 'windows-overlap'; readonly week: number; readonly next: number }
  | { readonly field: 'expected'; readonly code: 'phase-ends-first' | 'phase-expects-nothing'; readonly place: number }
  | { readonly field: 'expected'; readonly code: 'phases-overlap'; readonly place: number }
);

/** A late baseline may lie this many days after the start: no window may reach them. */
const BASELINE_DAYS = 7;

const isRising = (numbers: readonly number[]): boolean =>
  numbers.every((number, place) => place === 0 || number > (numbers[place - 1] ?? -Infinity));

const nameProblems = (program: ProgramSettings, others: readonly ProgramSettings[]): readonly ProgramProblem[] => {
  const name = program.name.trim();
  if (name === '') return [{ severity: 'error', field: 'name', code: 'name-missing' }];
  const taken = others.some((other) => other.name.trim().toLowerCase() === name.toLowerCase());
  return taken ? [{ severity: 'error', field: 'name', code: 'name-taken' }] : [];
};

const reviewProblems = ({ reviews }: ProgramSettings): readonly ProgramProblem[] => {
  if (!isRising(reviews.map(({ week }) => week)))
    return [{ severity: 'error', field: 'reviews', code: 'reviews-not-in-order' }];
  return reviews.flatMap(({ week, windowWeeks }, place): readonly ProgramProblem[] => {
    const next = reviews[place + 1];
    const from = Math.round(7 * week) - Math.round(7 * windowWeeks);
    return [
      ...(from > BASELINE_DAYS
        ? []
        : [{ severity: 'error', field: 'reviews', code: 'window-reaches-baseline', week, from } as const]),
      ...(next === undefined || week + windowWeeks < next.week - next.windowWeeks
        ? []
        : [{ severity: 'note', field: 'reviews', code: 'windows-overlap', week, next: next.week } as const]),
    ];
  });
};

const expectationProblems = ({ expectedChange }: ProgramSettings): readonly ProgramProblem[] =>
  expectedChange.flatMap((phase, place): readonly ProgramProblem[] => {
    const field = 'expected';
    if (phase.toWeek !== null && phase.toWeek <= phase.fromWeek)
      return [{ severity: 'error', field, code: 'phase-ends-first', place }];
    const overlaps = expectedChange
      .slice(0, place)
      .some(
        (other) =>
          other.measure === phase.measure &&
          other.fromWeek < (phase.toWeek ?? Infinity) &&
          phase.fromWeek < (other.toWeek ?? Infinity),
      );
    if (overlaps) return [{ severity: 'error', field, code: 'phases-overlap', place }];
    return phase.perKgWeightChange === 0 && phase.perMonth === 0
      ? [{ severity: 'note', field, code: 'phase-expects-nothing', place }]
      : [];
  });

/**
 * What is wrong with one program beside the others of the clinic. Weeks stand in order; a window (week c ± w) opens more
 * than 7 days after the start, c − w > 7 days, so that no visit is baseline and review at once; windows that overlap are
 * told of, for a visit inside two belongs to the nearer target, ties to the earlier; phases of one value do not overlap,
 * for their figures would be added.
 */
export const programProblems = (
  program: ProgramSettings,
  others: readonly ProgramSettings[],
): readonly ProgramProblem[] => [
  ...nameProblems(program, others),
  ...(isRising(program.plannedVisitWeeks)
    ? []
    : [{ severity: 'error', field: 'visits', code: 'visits-not-in-order' } as const]),
  ...reviewProblems(program),
  ...expectationProblems(program),
];
