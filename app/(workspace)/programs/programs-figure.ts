import type { PrecisionRow } from '../../../lib/cohort/types/precision-row';
import type { ProgramRow } from '../../../lib/cohort/types/program-row';
import type { programs } from '../../../lib/core/messages/en/programs';
import type { ProgramIntervalsData } from '../../../lib/figures/program-intervals/spec';
import type { Measure } from '../../../lib/measures/measure';

type Words = ReturnType<typeof programs>;

/** The threshold that results are judged by: none where the error study is missing or holds repositioning alone. */
export const judgingThreshold = (precision: PrecisionRow | undefined): number | null =>
  precision === undefined || precision.tier >= 5 || precision.form === 'log' ? null : precision.lsc;

/**
 * Mean changes on one axis over the error of one person. `programNames` is the clinic's whole list: a program keeps its
 * hue and shape when others are filtered away. `narrow` shortens the counts.
 */
export const programsFigure = (
  rows: readonly ProgramRow[],
  measure: Measure,
  precision: PrecisionRow | undefined,
  programNames: readonly string[],
  words: Words,
  narrow = false,
): ProgramIntervalsData => {
  const threshold = judgingThreshold(precision);
  return {
    title: words.axis({ value: measure.name }),
    unit: measure.unit,
    digits: measure.decimals + 1,
    programs: rows.map((row) => ({
      id: row.program,
      label: row.program,
      shapeIndex: Math.max(0, programNames.indexOf(row.program)),
      nText: narrow
        ? words.count({ n: row.nComparable, of: row.nPairs })
        : words.nText({ compared: row.nComparable, pairs: row.nPairs }),
      ...(row.mean === null || row.interval === null
        ? {}
        : { estimate: { mean: row.mean, low: row.interval[0], high: row.interval[1] } }),
      ...(threshold === null ? {} : { leastSignificantChange: threshold }),
    })),
  };
};
