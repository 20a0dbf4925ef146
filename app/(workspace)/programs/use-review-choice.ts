'use client';

import { parseAsFloat, parseAsStringLiteral, useQueryStates } from 'nuqs';
import { useMemo } from 'react';
import type { ReviewVisit } from '../../../lib/cohort/types/filter';
import { useSession } from '../../_state/workspace-provider';

export const REVIEW_VISITS = [
  'closest',
  'closest-comparable',
  'first-in-window',
] as const satisfies readonly ReviewVisit[];

const parsers = {
  week: parseAsFloat,
  visit: parseAsStringLiteral(REVIEW_VISITS).withDefault('closest'),
};

/** A planned review by its week, and which visit of its window is compared. */
export interface ShownReview {
  readonly week: number;
  readonly visit: ReviewVisit;
}

interface ReviewChoice {
  /** The weeks of all programs' planned reviews, ascending. */
  readonly weeks: readonly number[];
  /** Undefined where no program plans a review. */
  readonly shown: ShownReview | undefined;
  readonly choose: (part: Partial<ShownReview>) => void;
}

/** Which planned review is shown, kept in the address; the first where the address names none. */
export const useReviewChoice = (): ReviewChoice => {
  const { programs } = useSession().settings;
  const [{ week, visit }, set] = useQueryStates(parsers);
  const weeks = useMemo(
    () => [...new Set(programs.flatMap(({ reviews }) => reviews.map((review) => review.week)))].sort((a, b) => a - b),
    [programs],
  );
  const shownWeek = weeks.find((one) => one === week) ?? weeks[0];
  return {
    weeks,
    shown: shownWeek === undefined ? undefined : { week: shownWeek, visit },
    choose: (part) => void set(part),
  };
};
