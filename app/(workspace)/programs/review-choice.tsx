'use client';

import { useMessages } from '../../_state/language-provider';
import { LabelledSelect } from '../../_ui/labelled-select';
import styles from './programs-screen.module.css';
import { REVIEW_VISITS, type ShownReview } from './use-review-choice';

interface ReviewChoiceFieldsProps {
  readonly weeks: readonly number[];
  readonly shown: ShownReview;
  readonly choose: (part: Partial<ShownReview>) => void;
}

/** Which planned review, and which visit of its window: the default or a named sensitivity. */
export const ReviewChoiceFields = ({ weeks, shown, choose }: ReviewChoiceFieldsProps) => {
  const words = useMessages().programs.review;
  return (
    <div className={styles.review}>
      <LabelledSelect
        label={words.label}
        value={String(shown.week)}
        options={weeks.map((week) => ({
          value: String(week),
          label: words.week({ week }),
        }))}
        onChange={(week) => {
          choose({ week: Number(week) });
        }}
      />
      <LabelledSelect
        label={words.visitLabel}
        value={shown.visit}
        options={REVIEW_VISITS.map((visit) => ({ value: visit, label: words.visit[visit] }))}
        onChange={(visit) => {
          choose({ visit });
        }}
      />
    </div>
  );
};
