import { classify } from '../../measures/cut-offs/classify';
import type { CutOff, CutOffQuantity } from '../../measures/cut-offs/cut-off';
import { cutOffsFor } from '../../measures/cut-offs/cut-offs-for';
import type { Equation } from '../../measures/equation';
import type { StatusFinding } from '../types/contact-lists';
import type { ContactSeries, SeriesVisit } from './contact-series';

/** A level that is held against published cut-offs, and the equation that it came from. */
export interface StatusValue {
  readonly quantity: Extract<CutOffQuantity, 'ffmi' | 'asmi'>;
  readonly equation: Equation;
}

/**
 * Levels at the latest visit that meet a published criterion which they did not meet at the visit before: said once, then
 * only where it changed. Only cut-offs that go with the equation in force; the query leaves the level empty where
 * a guard forbids to read it, a lying equation on standing readings among them.
 */
export const statusFindings = (
  series: ContactSeries,
  values: readonly StatusValue[],
  cutOffs: readonly CutOff[],
): readonly StatusFinding[] => {
  const { sex, ageYears, bmi, lossIntended } = series;
  const latest = series.visits.at(-1);
  if (latest === undefined || sex === null || ageYears === null) return [];
  const chosen = new Set(cutOffs.map(({ id }) => id));
  return values.flatMap(({ quantity, equation }) => {
    const at = (visit: SeriesVisit): number | null => visit[quantity];
    const now = at(latest);
    if (now === null) return [];
    const before = series.visits.slice(0, -1).findLast((visit) => at(visit) !== null);
    const offered = cutOffsFor(
      {
        quantity,
        sex,
        ageYears,
        equationId: equation.id,
        chosen,
        ...(bmi === null ? {} : { bmi }),
        ...(lossIntended === null ? {} : { lossIntended }),
      },
      cutOffs,
    );
    return offered.flatMap((cutOff): StatusFinding[] => {
      const classed = classify(cutOff, now, { sex, ageYears });
      if (classed?.interval.criterion !== 'met') return [];
      const earlier = before === undefined ? undefined : classify(cutOff, at(before) ?? NaN, { sex, ageYears });
      if (earlier?.interval.id === classed.interval.id) return [];
      return [
        {
          clientKey: series.clientKey,
          client: series.client,
          program: series.program,
          date: latest.date,
          measure: quantity,
          value: now,
          cutOff: cutOff.id,
          words: classed.words,
          equation: equation.id,
        },
      ];
    });
  });
};
