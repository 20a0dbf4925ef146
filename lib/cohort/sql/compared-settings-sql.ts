import type { MeasureId } from '../../measures/measure-id';
import type { CohortModel } from '../model';
import { changeRows } from './change-sql';

const count = (when: string, name: string): string => `COUNT(*) FILTER (WHERE ${when}) AS ${name}`;

/** Pairs of one value by grade (0 comparable … 3 cannot be compared), with what their changes are where they take part. */
export const comparedSettingsQuery = (
  measure: MeasureId,
  model: CohortModel,
): string => `WITH ${changeRows(model.catalogue.measure(measure), model)}
SELECT pair_rank, COUNT(*) AS n_pairs, ${[
  count('guard_kind < 2', 'n_unguarded'),
  count('guard_kind < 2 AND direction = 1', 'n_up'),
  count('guard_kind < 2 AND direction = -1', 'n_down'),
  count('guard_kind < 2 AND direction = 0', 'n_within'),
  count('guard_kind < 2 AND direction IS NULL', 'n_no_threshold'),
  count('guard_kind = 2', 'n_held'),
  count('guard_kind = 3', 'n_stopped'),
].join(', ')}
FROM change_rows GROUP BY pair_rank ORDER BY pair_rank`;
