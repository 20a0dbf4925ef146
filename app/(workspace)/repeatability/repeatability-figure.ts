import type { PrecisionRow } from '../../../lib/cohort/types/precision-row';
import type { Ucum } from '../../../lib/core/units';
import type { repeatability } from '../../../lib/core/messages/en/repeatability';
import type { ErrorBarsData } from '../../../lib/figures/error-bars/spec';
import type { AnyMeasureId } from '../../../lib/measures/measure-id';
import { MEASURE_FACTS } from '../../../lib/measures/measure-facts';

type Words = ReturnType<typeof repeatability>;

/** LSC with its range of every value in one unit: thresholds on one axis can be compared at a glance. */
export const repeatabilityFigure = (
  rows: readonly PrecisionRow[],
  unit: Ucum,
  nameOf: (id: AnyMeasureId) => string,
  words: Words,
): ErrorBarsData => ({
  title: words.columns.lsc,
  values: rows.flatMap((row) => {
    const measure = MEASURE_FACTS[row.measure];
    if (measure.unit !== unit || row.lsc === null || row.lscInterval === null || row.lsc === 0 || row.form === 'log')
      return [];
    return [
      {
        id: row.measure,
        label: nameOf(row.measure),
        unit: measure.unit,
        digits: measure.decimals,
        estimate: row.lsc,
        low: row.lscInterval[0],
        high: row.lscInterval[1],
        note: words.barNote({
          tier: words.tier[row.tier],
          df: row.outsideDf ?? (row.tier === 5 ? row.dfWithin : row.dfBetween),
        }),
      },
    ];
  }),
});
