import { guardMask } from '../../measures/guard';
import type { Measure } from '../../measures/measure';
import { isExported } from '../is-exported';
import type { CohortModel } from '../model';
import { reciprocal } from './reciprocal';
import { outsidePath } from './outside-equation-sql';

/**
 * Sums for the repositioning error, one row: per value Σ over visits with two or more readings of squared deviations
 * from the visit's mean, Σ(k − 1), and the number of people. Cross-check visits are another study and left out.
 */
export const withinSumsQuery = ({ catalogue, bases }: CohortModel): string => `SELECT ${catalogue.all
  .map((measure) => {
    const k = `v.${bases.of(measure).column}`;
    const squared = `(r.${measure.id} - v.${measure.id}) * (r.${measure.id} - v.${measure.id})`;
    return `SUM(CASE WHEN ${k} >= 2 THEN ${squared} END) AS ss_${measure.id},
  SUM(CASE WHEN ${k} >= 2 AND r.${measure.id} IS NOT NULL THEN CAST(${k} - 1 AS DOUBLE PRECISION) / NULLIF(${k}, 0) END) AS df_${measure.id},
  COUNT(DISTINCT CASE WHEN ${k} >= 2 THEN v.client_key END) AS people_${measure.id}`;
  })
  .join(',\n  ')}
FROM visits AS v
JOIN reading_values AS r ON r.client_key = v.client_key AND r.visit_date = v.visit_date
  AND r.visit_purpose = v.visit_purpose AND r.device = v.device AND r.frequency_khz = v.frequency_khz
WHERE v.readings >= 2 AND v.visit_purpose <> 'crosscheck'`;

/** SQL: whether a visit `v` of the study, as `s` in `study_visits`, counts in its cluster for a value. */
export const isStudyMember = (measure: Measure, model: CohortModel): string =>
  `s.program_started = 0 AND s.${isExported(measure) ? 'study_rank_exported' : 'study_rank'} <= 1
    AND s.guards & ${String(guardMask(model.guards(measure).stop))} = 0
    AND NOT (${outsidePath(measure, 'v')})`;

/** SQL of a study visit’s value where it counts for the between-day error: `s` of `study_visits`, `v` of `visits`. */
export const member = (measure: Measure, model: CohortModel): string =>
  `CASE WHEN ${isStudyMember(measure, model)} THEN v.${measure.id} END`;

/**
 * Sums for the between-day error, one row: per value Σ(ȳ_iv − ȳ_i)², Σ(m_i − 1), Σ(m_i − 1)·mean(1/k) and the number of
 * people with two or more dates.
 */
export const betweenSumsQuery = (model: CohortModel): string => {
  const { all } = model.catalogue;
  return `WITH member_values AS (
  SELECT s.client_key, s.visit_purpose, s.start_day, ${all
    .map(
      (measure) =>
        `${member(measure, model)} AS ${measure.id}, ${reciprocal(`v.${model.bases.of(measure).column}`)} AS ik_${measure.id}`,
    )
    .join(', ')}
  FROM study_visits AS s JOIN visits AS v ON v.client_key = s.client_key AND v.visit_no = s.visit_no
),
centred AS (
  SELECT client_key, visit_purpose, start_day, ${all
    .map(
      ({ id }) =>
        `${id}, CASE WHEN ${id} IS NOT NULL THEN ik_${id} END AS ik_${id}, AVG(${id}) OVER cluster AS mean_${id}`,
    )
    .join(', ')}
  FROM member_values WINDOW cluster AS (PARTITION BY client_key, visit_purpose, start_day)
),
clusters AS (
  SELECT client_key, ${all
    .map(
      ({ id }) =>
        `COUNT(${id}) AS m_${id}, SUM((${id} - mean_${id}) * (${id} - mean_${id})) AS ss_${id}, AVG(ik_${id}) AS ik_${id}`,
    )
    .join(', ')}
  FROM centred GROUP BY client_key, visit_purpose, start_day
)
SELECT ${all
    .map(
      ({ id }) => `SUM(CASE WHEN m_${id} >= 2 THEN ss_${id} END) AS ss_${id},
  CAST(SUM(CASE WHEN m_${id} >= 2 THEN m_${id} - 1 END) AS DOUBLE PRECISION) AS df_${id},
  SUM(CASE WHEN m_${id} >= 2 THEN (m_${id} - 1) * ik_${id} END) AS ik_${id},
  COUNT(DISTINCT CASE WHEN m_${id} >= 2 THEN client_key END) AS people_${id}`,
    )
    .join(',\n  ')}
FROM clusters`;
};
