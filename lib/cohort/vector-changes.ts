import type { IsoDate } from '../core/iso-date';
import type { Row } from '../engine/types';
import { bivariateThreshold } from '../stats/bivariate-threshold';
import { bivariateVarianceOfChange } from '../stats/bivariate-variance-of-change';
import type { Covariance2 } from '../stats/bivariate';
import { quadraticForm } from '../stats/quadratic-form';
import type { CohortModel } from './model';
import type { Ask } from './question';
import { reasonsOf } from './reasons';
import { vectorChangesQuery } from './sql/vector-change-sql';
import type { Comparable } from './types/change-row';
import { purposeOf } from './purpose-number';
import type { CohortFilter, Level, Purpose } from './types/filter';
import type { VectorChangeRow, VectorResult } from './types/vector-change';
import { matrixOf, type MeasuredVectorError } from './vector-error';

const GRADES: readonly Comparable[] = ['comparable', 'by-procedure', 'caution', 'no'];

const at = (row: Row, name: string): number => Number(row[name]);

interface Judged {
  readonly variance: Covariance2 | undefined;
  readonly squared: number | undefined;
  readonly threshold: number | undefined;
}

const judged = (row: Row, error: MeasuredVectorError | undefined, level: Level): Judged => {
  if (error === undefined) return { variance: undefined, squared: undefined, threshold: undefined };
  const variance = bivariateVarianceOfChange(error.components, at(row, 'k_from'), at(row, 'k_to'));
  const change = [at(row, 'x_to') - at(row, 'x_from'), at(row, 'y_to') - at(row, 'y_from')] as const;
  return {
    variance,
    squared: quadraticForm(change, variance),
    threshold: bivariateThreshold(level / 100, error.components.df),
  };
};

const resultOf = (row: Row, { squared, threshold }: Judged): VectorResult | null => {
  if (at(row, 'stops') !== 0) return null;
  if (row['admitted'] !== 1) return 'cannot-compare';
  if (squared === undefined || threshold === undefined) return 'no-threshold';
  return squared > 0 && squared >= threshold * (1 - 1e-9) ? 'beyond' : 'within';
};

const rowOf = (row: Row, model: CohortModel, error: MeasuredVectorError | undefined, level: Level): VectorChangeRow => {
  const found = judged(row, error, level);
  const stopped = at(row, 'stops') !== 0;
  return {
    clientKey: at(row, 'client_key'),
    client: String(row['client_id']),
    program: String(row['program']),
    purpose: purposeOf(at(row, 'purpose')),
    from: String(row['from_date']) as IsoDate,
    to: String(row['to_date']) as IsoDate,
    fromVisit: at(row, 'from_no'),
    toVisit: at(row, 'to_no'),
    kFrom: at(row, 'k_from'),
    kTo: at(row, 'k_to'),
    start: [at(row, 'x_from'), at(row, 'y_from')],
    change: [at(row, 'x_to') - at(row, 'x_from'), at(row, 'y_to') - at(row, 'y_from')],
    variance: found.variance === undefined ? null : matrixOf(found.variance),
    squared: found.squared ?? null,
    threshold: found.threshold ?? null,
    comparable: GRADES[at(row, 'pair_rank')] ?? 'no',
    result: resultOf(row, found),
    guard: stopped ? 'stop' : 'none',
    reasons: [
      ...reasonsOf(
        { broken: at(row, 'broken'), unknown: at(row, 'unknown'), guards: at(row, 'stops') },
        model.masks.computed,
      ),
      ...(error === undefined ? (['no_error_study'] as const) : []),
    ],
  };
};

/** Every change of the vector under a filter, held against the clinic's own error of both values together. */
export const vectorChangesOf = async (
  ask: Ask,
  model: CohortModel,
  error: MeasuredVectorError | undefined,
  filter: CohortFilter,
  options: { readonly purpose: Purpose; readonly clientKey?: number; readonly signal?: AbortSignal | undefined },
): Promise<readonly VectorChangeRow[]> =>
  (await ask(vectorChangesQuery(model), filter, options)).map((row) => rowOf(row, model, error, filter.level));
