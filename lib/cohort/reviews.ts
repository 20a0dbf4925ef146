import type { IsoDate } from '../core/iso-date';
import type { Row } from '../engine/types';
import type { CohortModel } from './model';
import type { Ask } from './question';
import { reviewCountsQuery, reviewRowsQuery } from './sql/reviews-sql';
import type { Comparable } from './types/change-row';
import type { CohortFilter } from './types/filter';
import type { ReviewCounts, ReviewRow, ReviewState } from './types/reviews';

const GRADES: readonly Comparable[] = ['comparable', 'by-procedure', 'caution', 'no'];

const isNull = (row: Row, name: string): boolean => row[name] === null || row[name] === undefined;
const dateAt = (row: Row, name: string): IsoDate => String(row[name]) as IsoDate;

const reviewRow = (row: Row): ReviewRow => ({
  clientKey: Number(row['client_key']),
  client: String(row['client_id']),
  program: String(row['program']),
  week: Number(row['review_week']),
  windowWeeks: Number(row['window_weeks']),
  target: dateAt(row, 'target_date'),
  windowFrom: dateAt(row, 'window_from'),
  windowTo: dateAt(row, 'window_to'),
  state: String(row['state']) as ReviewState,
  seenOn: isNull(row, 'seen_date') ? null : dateAt(row, 'seen_date'),
  actualDay: isNull(row, 'actual_day') ? null : Number(row['actual_day']),
  passedOver: Number(row['passed_over']),
  comparable: isNull(row, 'pair_rank') ? null : (GRADES[Number(row['pair_rank'])] ?? 'no'),
});

const reviewCounts = (row: Row): ReviewCounts => ({
  program: String(row['program']),
  week: Number(row['review_week']),
  windowWeeks: Number(row['window_weeks']),
  due: Number(row['n_due']),
  seen: Number(row['n_seen']),
  pairs: Number(row['n_pairs']),
  comparable: Number(row['n_comparable']),
  seenEarly: Number(row['n_seen_early']),
  notYet: Number(row['n_not_yet']),
  endedBefore: Number(row['n_ended_before']),
  passedOver: Number(row['passed_over']),
  actualDay: isNull(row, 'day_median')
    ? null
    : { q1: Number(row['day_q1']), median: Number(row['day_median']), q3: Number(row['day_q3']) },
});

/** Every planned review of every enrolment under the filter, for the filter's value. */
export const reviewsOf = async (
  ask: Ask,
  model: CohortModel,
  filter: CohortFilter,
  signal?: AbortSignal,
): Promise<readonly ReviewRow[]> =>
  (
    await ask(reviewRowsQuery(model.catalogue.measure(filter.measure), model), filter, {
      purpose: 'baseline-review',
      signal,
    })
  ).map(reviewRow);

/** Due, seen, seen early … of every program's planned reviews under the filter, for the filter's value. */
export const reviewCountsOf = async (
  ask: Ask,
  model: CohortModel,
  filter: CohortFilter,
  signal?: AbortSignal,
): Promise<readonly ReviewCounts[]> =>
  (
    await ask(reviewCountsQuery(model.catalogue.measure(filter.measure), model), filter, {
      purpose: 'baseline-review',
      signal,
    })
  ).map(reviewCounts);
