import type { ProgramRow } from '../../../lib/cohort/types/program-row';
import type { Formatters } from '../../../lib/core/formatters';
import type { programs } from '../../../lib/core/messages/en/programs';
import type { Measure } from '../../../lib/measures/measure';
import { programDirection } from './program-direction';

type Words = ReturnType<typeof programs>;

/** One program in words: its mean with the interval, or why there is none. */
export const programSummary = (row: ProgramRow, measure: Measure, words: Words, f: Formatters): string => {
  if (row.nPairs === 0) return row.purpose === 'baseline-review' ? words.summary.noReview : words.summary.none;
  if (row.nComparable === 0) return words.summary.nothingCompared({ pairs: row.nPairs });
  const direction = programDirection(row);
  if (direction === undefined || row.mean === null || row.interval === null) return words.summary.tooFew;
  const change = (value: number): string => f.change(value, measure.unit, measure.decimals + 1);
  return words.summary.mean({
    mean: `${change(row.mean)}\u00A0${f.unit(measure.unit)}`.trim(),
    low: change(row.interval[0]),
    high: change(row.interval[1]),
    direction,
  });
};
