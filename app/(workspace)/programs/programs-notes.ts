import type { Cohort } from '../../../lib/cohort/types/cohort';
import type { Level, Purpose } from '../../../lib/cohort/types/filter';
import type { PrecisionRow } from '../../../lib/cohort/types/precision-row';
import type { ProgramRow } from '../../../lib/cohort/types/program-row';
import type { programs } from '../../../lib/core/messages/en/programs';
import type { ShownReview } from './use-review-choice';
import { judgingThreshold } from './programs-figure';

type Words = ReturnType<typeof programs>;

/** What must be read with the figure: what error alone would give, what is not judged, and what is not compared. */
export const programsNotes = (
  rows: readonly ProgramRow[],
  precision: PrecisionRow | undefined,
  { purpose, review }: { readonly purpose: Purpose; readonly review: ShownReview | undefined },
  level: Level,
  words: Words,
  errorFrom: Cohort['errorFrom'],
): string[] => {
  const held = rows.reduce((sum, row) => sum + row.held, 0);
  const stopped = rows.reduce((sum, row) => sum + row.stopped, 0);
  const threshold = judgingThreshold(precision);
  const range = precision?.changedPer100 ?? null;
  return [
    words.orderNote,
    ...(threshold === null || range === null || precision === undefined
      ? []
      : [words.byError({ level, low: range[0], high: range[1], df: precision.dfBetween })]),
    ...(precision?.tier === 5 ? [words.lowerLimit] : []),
    ...(errorFrom === 'everyone' ? [] : [words.errorByGroup]),
    ...(held === 0 ? [] : [words.heldNote({ n: held })]),
    ...(stopped === 0 ? [] : [words.stoppedNote({ n: stopped })]),
    ...(purpose === 'consecutive' ? [words.consecutiveNote] : []),
    ...(review === undefined ? [] : [words.review.taken[review.visit], words.review.seenOfDue]),
    words.regression,
  ];
};
