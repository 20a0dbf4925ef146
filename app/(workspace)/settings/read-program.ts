import type {
  ExpectedChange,
  PlannedReview,
  ProgramSettings,
} from '../../../lib/cohort/settings-parts/program-settings';
import type { ExpectedDraft, ProgramDraft } from './program-draft';
import { typedNumber } from './typed-number';

/** What cannot be read of a program as it is typed. */
export interface Unreadable {
  readonly field: 'visits' | 'reviews' | 'expected';
  readonly place: number;
}

export interface ReadProgram {
  readonly program: ProgramSettings;
  readonly unreadable: readonly Unreadable[];
}

const parts = (text: string): readonly string[] =>
  text
    .split(/[,;]/)
    .map((part) => part.trim())
    .filter((part) => part !== '');

const weeksFrom = (text: string): readonly number[] | undefined => {
  const weeks = parts(text).map(typedNumber);
  return weeks.every((week) => week !== undefined && week >= 0) ? (weeks as readonly number[]) : undefined;
};

const reviewsFrom = (text: string): readonly PlannedReview[] | undefined => {
  const reviews = parts(text).map((part) => {
    const [week, windowWeeks, more] = part.split(/±|\+\/-|\+-|\//).map((number) => typedNumber(number));
    if (week === undefined || windowWeeks === undefined || more !== undefined) return undefined;
    return week > 0 && windowWeeks > 0 ? { week, windowWeeks } : undefined;
  });
  return reviews.every((review) => review !== undefined) ? reviews : undefined;
};

const expectedFrom = (draft: ExpectedDraft): ExpectedChange | undefined => {
  const orZero = (text: string): number | undefined => (text.trim() === '' ? 0 : typedNumber(text));
  const [fromWeek, perKgWeightChange, perMonth] = [draft.fromWeek, draft.perKg, draft.perMonth].map(orZero);
  const toWeek = draft.toWeek.trim() === '' ? null : typedNumber(draft.toWeek);
  if (fromWeek === undefined || perKgWeightChange === undefined || perMonth === undefined || toWeek === undefined)
    return undefined;
  if (fromWeek < 0 || (toWeek !== null && toWeek <= 0)) return undefined;
  return { measure: draft.measure, fromWeek, toWeek, perKgWeightChange, perMonth };
};

/** A typed program as the settings keep it, and what of it cannot be read. */
export const readProgram = (draft: ProgramDraft): ReadProgram => {
  const visits = weeksFrom(draft.visits);
  const reviews = reviewsFrom(draft.reviews);
  const expected = draft.expected.map(expectedFrom);
  return {
    program: {
      name: draft.name.trim(),
      plannedVisitWeeks: [...(visits ?? [])],
      reviews: [...(reviews ?? [])],
      intended: {
        weight: draft.weight === 'none' ? null : draft.weight,
        lean: draft.lean === 'none' ? null : draft.lean,
      },
      expectedChange: expected.filter((phase) => phase !== undefined),
    },
    unreadable: [
      ...(visits === undefined ? [{ field: 'visits' as const, place: 0 }] : []),
      ...(reviews === undefined ? [{ field: 'reviews' as const, place: 0 }] : []),
      ...expected.flatMap((phase, place) => (phase === undefined ? [{ field: 'expected' as const, place }] : [])),
    ],
  };
};
