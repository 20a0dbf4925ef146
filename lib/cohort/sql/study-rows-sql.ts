import type { Measure } from '../../measures/measure';
import { guardMask } from '../../measures/guard';
import type { CohortModel } from '../model';
import { outsidePath } from './outside-equation-sql';
import { isStudyMember } from './precision-sql';

/** SQL: device, site, operator and program of visits `v`, of which `o` is the operator and `g` the enrolment. */
const WHERE_MEASURED = "NULLIF(v.device, '') AS device, v.site, o.operator, g.program";

/** The CTE `operators`: for each visit of `table` the operator, where every reading of the visit names the same one. */
export const operators = (table: string): string => `operators AS (
  SELECT v.client_key, v.visit_no,
    CASE WHEN COUNT(q.operator) = COUNT(*) AND MIN(q.operator) = MAX(q.operator) THEN MIN(q.operator) END AS operator
  FROM ${table} AS t JOIN visits AS v ON v.client_key = t.client_key AND v.visit_no = t.visit_no
  JOIN reading_values AS r ON r.client_key = v.client_key AND r.visit_date = v.visit_date
    AND r.visit_purpose = v.visit_purpose AND r.device = v.device AND r.frequency_khz = v.frequency_khz
  JOIN readings AS q ON q.reading_key = r.reading_key
  GROUP BY v.client_key, v.visit_no
)`;

/** The CTE `enrolled`: for each visit of `table` the enrolment that was open then, else the last one begun, else the first. */
export const enrolled = (table: string): string => `enrolled AS (
  SELECT v.client_key, v.visit_no, e.program, ROW_NUMBER() OVER (PARTITION BY v.client_key, v.visit_no
    ORDER BY CASE WHEN (e.program_start IS NULL OR e.program_start <= v.visit_date)
      AND (e.program_end IS NULL OR e.program_end >= v.visit_date) THEN 0 WHEN e.program_start <= v.visit_date THEN 1 ELSE 2 END,
    e.program_start DESC NULLS LAST, e.enrolment_no) AS place
  FROM ${table} AS t JOIN visits AS v ON v.client_key = t.client_key AND v.visit_no = t.visit_no
  JOIN enrolments AS e ON e.client_key = v.client_key
)`;

const JOIN_PLACED = `LEFT JOIN operators AS o ON o.client_key = v.client_key AND o.visit_no = v.visit_no
LEFT JOIN enrolled AS g ON g.client_key = v.client_key AND g.visit_no = v.visit_no AND g.place = 1`;

/**
 * One row per visit of the error study that holds the value: in which cluster it lies, whether it counts, and the masks
 * that say why not. `stopped`: guards that stop this value.
 */
export const studyRowsQuery = (measure: Measure, model: CohortModel): string => `WITH ${enrolled('study_visits')},
${operators('study_visits')}
SELECT s.client_key, c.client_id, s.visit_purpose, s.start_day, v.visit_no, v.visit_date, v.${measure.id} AS value,
  v.${model.bases.of(measure).column} AS k, s.program_started, s.broken, s.unknown,
  s.guards & ${String(guardMask(model.guards(measure).stop))} AS stopped,
  CASE WHEN ${outsidePath(measure, 'v')} THEN 1 ELSE 0 END AS other_path,
  CASE WHEN ${isStudyMember(measure, model)} THEN 1 ELSE 0 END AS kept,
  ${WHERE_MEASURED}
FROM study_visits AS s
JOIN visits AS v ON v.client_key = s.client_key AND v.visit_no = s.visit_no
JOIN clients AS c ON c.client_key = s.client_key
${JOIN_PLACED}
WHERE v.${measure.id} IS NOT NULL
ORDER BY c.client_id, s.visit_purpose, s.start_day, v.visit_no`;

/** The CTE `replicated`: visits with two or more readings of a value, their Σ(y − ȳ)² and second − first reading. */
const replicated = (measure: Measure, model: CohortModel): string => {
  const { id } = measure;
  const k = `v.${model.bases.of(measure).column}`;
  return `replicated AS (
  SELECT v.client_key, v.visit_no, v.visit_date, v.device, v.site, ${k} AS k, v.${id} AS mean_value,
    SUM((r.${id} - v.${id}) * (r.${id} - v.${id})) AS ss,
    MAX(CASE WHEN r.reading = 2 THEN r.${id} END) - MAX(CASE WHEN r.reading = 1 THEN r.${id} END) AS step
  FROM visits AS v
  JOIN reading_values AS r ON r.client_key = v.client_key AND r.visit_date = v.visit_date
    AND r.visit_purpose = v.visit_purpose AND r.device = v.device AND r.frequency_khz = v.frequency_khz
  WHERE ${k} >= 2 AND v.visit_purpose <> 'crosscheck' AND r.${id} IS NOT NULL
  GROUP BY v.client_key, v.visit_no, v.visit_date, v.device, v.site, ${k}, v.${id}
)`;
};

/** Repositioning sums of a value by device, site, operator and program together: Σ(k−1)s², Σ(k−1), people by each. */
export const replicateGroupsQuery = (
  measure: Measure,
  model: CohortModel,
): string => `WITH ${replicated(measure, model)},
${enrolled('replicated')},
${operators('replicated')},
placed AS (SELECT v.ss, v.k, v.client_key, ${WHERE_MEASURED} FROM replicated AS v
  ${JOIN_PLACED})
${(['device', 'operator', 'site', 'program'] as const)
  .map(
    (by) => `SELECT '${by}' AS grouped_by, ${by} AS group_name, SUM(ss) AS ss,
  CAST(SUM(k - 1) AS DOUBLE PRECISION) AS df, COUNT(DISTINCT client_key) AS people FROM placed GROUP BY ${by}`,
  )
  .join('\nUNION ALL ')}
ORDER BY 1, 2 NULLS FIRST`;

/**
 * One row per number of readings k: how many visits have it, Σs² and the largest s² with whose it is, Σd, Σd² about their
 * mean and n of second − first reading over all k, and Σ(k−1)(s/x̄)² for the relative error.
 */
export const replicateFactsQuery = (
  measure: Measure,
  model: CohortModel,
): string => `WITH ${replicated(measure, model)},
ranked AS (
  SELECT replicated.*, ss / NULLIF(CAST(k - 1 AS DOUBLE PRECISION), 0) AS variance,
    ROW_NUMBER() OVER (PARTITION BY k ORDER BY ss DESC NULLS LAST, client_key, visit_no) AS place,
    AVG(step) OVER () AS mean_step FROM replicated
)
SELECT r.k, COUNT(*) AS visits, SUM(r.variance) AS variances, MAX(r.variance) AS largest,
  MIN(CASE WHEN r.place = 1 THEN r.client_key END) AS client_key, MIN(CASE WHEN r.place = 1 THEN c.client_id END) AS client_id,
  MIN(CASE WHEN r.place = 1 THEN r.visit_date END) AS visit_date,
  COUNT(r.step) AS steps, MIN(r.mean_step) AS mean_step,
  SUM((r.step - r.mean_step) * (r.step - r.mean_step)) AS step_squares
FROM ranked AS r JOIN clients AS c ON c.client_key = r.client_key
GROUP BY r.k ORDER BY visits DESC NULLS LAST, r.k`;
