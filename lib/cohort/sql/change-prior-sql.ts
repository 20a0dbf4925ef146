import type { Measure } from '../../measures/measure';
import type { CohortModel } from '../model';
import { changeRows } from './change-sql';

/**
 * Judged changes of a value under the filter by the size of their error: how many, of how many people, their mean and
 * centred sum of squares. `lsc` is f·√V of the group, `factor` its f.
 */
export const changePriorQuery = (measure: Measure, model: CohortModel): string => `WITH ${changeRows(measure, model)},
judged AS (
  SELECT client_key, lsc, factor, change, AVG(change) OVER (PARTITION BY lsc, factor) AS mean
  FROM change_rows WHERE admitted = 1 AND guard_kind < 2 AND tier <= 3 AND lsc IS NOT NULL
)
SELECT lsc, factor, COUNT(*) AS n, COUNT(DISTINCT client_key) AS people, MIN(mean) AS mean, SUM((change - mean) * (change - mean)) AS ss
FROM judged GROUP BY lsc, factor ORDER BY lsc, factor`;
