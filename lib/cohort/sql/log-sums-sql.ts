import type { Measure } from '../../measures/measure';
import type { CohortModel } from '../model';
import { isStudyMember, type SumsOf } from './precision-sql';
import { reciprocal } from './reciprocal';

/**
 * The sums of the error study of one value on ln of its readings, one row (or one for each group of `visit_groups`). A visit counts by the mean of the logarithms of
 * its readings; they are summed about ln of the visit's mean, so that no digits are lost. `lowest`: the smallest visit
 * value; without a relative form where it is not above zero.
 */
export const logSumsQuery = (measure: Measure, model: CohortModel, of: SumsOf = 'everyone'): string => {
  const { id } = measure;
  const grouped = of === 'groups';
  const named = grouped ? 'group_name, ' : '';
  const group = grouped ? ' GROUP BY group_name' : '';
  const k = `v.${model.bases.of(measure).column}`;
  const apart = `CASE WHEN r.${id} > 0 AND v.${id} > 0 THEN LN(r.${id}) - LN(v.${id}) END`;
  return `WITH apart AS (
  SELECT v.client_key, v.visit_no, v.visit_purpose, ${grouped ? "COALESCE(g.group_name, '') AS group_name, " : ''}${k} AS k, v.${id} AS value, ${apart} AS u
  FROM visits AS v
  ${grouped ? 'LEFT JOIN visit_groups AS g ON g.client_key = v.client_key AND g.visit_no = v.visit_no' : ''}
  JOIN reading_values AS r ON r.client_key = v.client_key AND r.visit_date = v.visit_date
    AND r.visit_purpose = v.visit_purpose AND r.device = v.device AND r.frequency_khz = v.frequency_khz
  WHERE v.${id} IS NOT NULL AND r.${id} IS NOT NULL AND (${k} >= 2 OR EXISTS (
    SELECT 1 FROM study_visits AS s WHERE s.client_key = v.client_key AND s.visit_no = v.visit_no))
),
logs AS (
  SELECT client_key, visit_no, visit_purpose, ${named}k, value, AVG(u) AS mean_u,
    SUM(u * u) - SUM(u) * SUM(u) / NULLIF(CAST(COUNT(u) AS DOUBLE PRECISION), 0) AS ss
  FROM apart GROUP BY client_key, visit_no, visit_purpose, ${named}k, value
),
within_sums AS (
  SELECT ${named}SUM(ss) AS ss, CAST(SUM(k - 1) AS DOUBLE PRECISION) AS df, COUNT(DISTINCT client_key) AS people
  FROM logs WHERE k >= 2 AND visit_purpose <> 'crosscheck'${group}
),
members AS (
  SELECT s.client_key, s.visit_purpose, s.start_day, ${grouped ? 'l.group_name, ' : ''}CASE WHEN l.value > 0 THEN LN(l.value) END + l.mean_u AS y,
    ${reciprocal('l.k')} AS ik
  FROM study_visits AS s
  JOIN visits AS v ON v.client_key = s.client_key AND v.visit_no = s.visit_no
  JOIN logs AS l ON l.client_key = s.client_key AND l.visit_no = s.visit_no
  WHERE ${isStudyMember(measure, model)}
),
centred AS (
  SELECT members.*, AVG(y) OVER (PARTITION BY client_key, visit_purpose, start_day) AS mean_y FROM members WHERE y IS NOT NULL
),
clusters AS (
  SELECT client_key, ${grouped ? 'CASE WHEN MIN(group_name) = MAX(group_name) THEN MIN(group_name) END AS group_name, ' : ''}COUNT(*) AS m, SUM((y - mean_y) * (y - mean_y)) AS ss, AVG(ik) AS ik
  FROM centred GROUP BY client_key, visit_purpose, start_day
),
between_sums AS (
  SELECT ${named}SUM(ss) AS ss, CAST(SUM(m - 1) AS DOUBLE PRECISION) AS df, SUM((m - 1) * ik) AS ik,
    COUNT(DISTINCT client_key) AS people FROM clusters WHERE m >= 2${group}
)
SELECT ${grouped ? 'b.group_name, ' : ''}w.ss AS within_ss, w.df AS within_df, w.people AS within_people, b.ss AS between_ss, b.df AS between_df,
  b.ik AS between_ik, b.people AS between_people, (SELECT MIN(value) FROM logs) AS lowest
FROM ${
    grouped
      ? `between_sums AS b LEFT JOIN within_sums AS w ON w.group_name = b.group_name
WHERE b.group_name <> '' ORDER BY b.group_name`
      : 'within_sums AS w CROSS JOIN between_sums AS b'
  }`;
};
