import type { Measure } from '../measures/measure';
import { CHANGE_COLUMNS, changeRowFrom } from './change-row-from';
import type { CohortModel } from './model';
import type { Ask } from './question';
import { changeRows } from './sql/change-sql';
import type { ChangeRow } from './types/change-row';
import type { CohortFilter, Purpose } from './types/filter';

interface ChangesOptions {
  readonly purpose: Purpose;
  readonly measure?: Measure;
  readonly clientKey?: number;
  readonly signal?: AbortSignal | undefined;
}

/** Every pair of one value under a filter, by client and date. */
export const changesOf = async (
  ask: Ask,
  model: CohortModel,
  filter: CohortFilter,
  options: ChangesOptions,
): Promise<readonly ChangeRow[]> => {
  const measure = options.measure ?? model.catalogue.measure(filter.measure);
  const sql = `WITH ${changeRows(measure, model)}
SELECT ${CHANGE_COLUMNS} FROM change_rows AS r JOIN clients AS c ON c.client_key = r.client_key
ORDER BY c.client_id, r.review_week NULLS FIRST, r.to_date, r.from_date, r.program, r.to_no, r.from_no`;
  return (await ask(sql, filter, options)).map((row) => changeRowFrom(row, measure, model.masks));
};
