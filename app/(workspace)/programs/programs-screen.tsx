'use client';

import { parseAsStringLiteral, useQueryState } from 'nuqs';
import type { Purpose } from '../../../lib/cohort/types/filter';
import type { ProgramRow } from '../../../lib/cohort/types/program-row';
import type { ReviewCounts } from '../../../lib/cohort/types/reviews';
import { useMessages } from '../../_state/language-provider';
import { useCohortQuery } from '../../_state/use-cohort-query';
import { Answered } from '../../_ui/answered';
import { SegmentedChoice } from '../../_ui/segmented-choice';
import styles from './programs-screen.module.css';
import { ProgramsView } from './programs-view';
import { ReviewChoiceFields } from './review-choice';
import { useReviewChoice, type ShownReview } from './use-review-choice';

const PURPOSES = ['baseline-latest', 'baseline-review', 'consecutive'] as const;
const parsePurpose = parseAsStringLiteral(PURPOSES).withDefault('baseline-latest');

/** With the question that it answers: what was asked last may not be answered yet. */
interface ProgramsAnswer {
  readonly purpose: Purpose;
  readonly review: ShownReview | undefined;
  readonly rows: readonly ProgramRow[];
  /** Of the planned review that is shown, whose programs alone have rows; empty for other purposes. */
  readonly reviews: readonly ReviewCounts[];
}

/** Programs: did anything change by more than our own error, program by program, in the order of their names. */
export const ProgramsScreen = () => {
  const words = useMessages().programs;
  const [asked, setPurpose] = useQueryState('purpose', parsePurpose);
  const { weeks, shown, choose } = useReviewChoice();
  const purpose = asked === 'baseline-review' && shown === undefined ? 'baseline-latest' : asked;
  const review = purpose === 'baseline-review' ? shown : undefined;
  const key = review === undefined ? '' : ` ${String(review.week)} ${review.visit}`;
  const query = useCohortQuery<ProgramsAnswer>(`programs ${purpose}${key}`, async (cohort, filter, signal) => {
    if (review === undefined)
      return { purpose, review, rows: await cohort.programs(filter, purpose, signal), reviews: [] };
    const narrowed = { ...filter, reviewWeek: review.week, reviewVisit: review.visit };
    const reviews = await cohort.reviewCounts(narrowed, signal);
    const rows = await cohort.programs(narrowed, purpose, signal);
    const planned = rows.filter(({ program }) => reviews.some((one) => one.program === program));
    return { purpose, review, rows: planned, reviews };
  });
  const offered = PURPOSES.filter((value) => value !== 'baseline-review' || weeks.length > 0);
  const choice = (
    <div className={styles.choices}>
      <SegmentedChoice
        label={words.purposeLabel}
        value={purpose}
        options={offered.map((value) => ({ value, label: words.purpose[value] }))}
        onChange={(value) => void setPurpose(value)}
      />
      {review === undefined ? null : <ReviewChoiceFields weeks={weeks} shown={review} choose={choose} />}
    </div>
  );
  return <Answered query={query}>{(answer) => <ProgramsView {...answer} choice={choice} />}</Answered>;
};
