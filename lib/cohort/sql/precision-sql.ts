import { guardMask } from '../../measures/guard';
import type { Measure } from '../../measures/measure';
import { isExported } from '../is-exported';
import type { CohortModel } from '../model';
import { reciprocal } from './reciprocal';
import { outsidePath } from './outside-equation-sql';

/** `everyone`: one row. `groups`: a row with `group_name` for each group of `visit_groups`. */
export type SumsOf = 'everyone' | 'groups';

/**
 * Sums for the repositioning error, one row (or one for each group): per value Σ over visits with two or more readings of squared deviations
 * from the visit's mean, Σ(k − 1), and the number of people. Cross-check visits are another study and left out.
 */
export const withinSumsQuery = (
  { catalogue, bases }: CohortModel,
  of: SumsOf = 'everyone',
): string => `SELECT ${of === 'groups' ? 'g.group_name, ' : ''}${catalogue.all
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
${of === 'groups' ? 'JOIN visit_groups AS g ON g.client_key = v.client_key AND g.visit_no = v.visit_no' : ''}
WHERE v.readings >= 2 AND v.visit_purpose <> 'crosscheck'
${of === 'groups' ? 'GROUP BY g.group_name ORDER BY g.group_name' : ''}`;

/** SQL: whether a visit `v` of the study, as `s` in `study_visits`, counts in its cluster for a value. */
export const isStudyMember = (measure: Measure, model: CohortModel): string =>
  `s.program_started = 0 AND s.${isExported(measure) ? 'study_rank_exported' : 'study_rank'} <= 1
    AND s.guards & ${String(guardMask(model.guards(measure).stop))} = 0
    AND NOT (${outsidePath(measure, 'v')})`;

/** SQL of a study visit’s value where it counts for the between-day error: `s` of `study_visits`, `v` of `visits`. */
export const member = (measure: Measure, model: CohortModel): string =>
  `CASE WHEN ${isStudyMember(measure, model)} THEN v.${measure.id} END`;

/** SQL of what a cluster's visits that hold the value have as their group: the first and the last by name. */
const groupBounds = (id: string): string =>
  `MIN(CASE WHEN ${id} IS NOT NULL THEN group_name END) AS lo_${id}, MAX(CASE WHEN ${id} IS NOT NULL THEN group_name END) AS hi_${id}`;

/**
 * Sums for the between-day error, one row (or one for each group, of the clusters that lie in it with every visit that
 * holds the value): per value Σ(ȳ_iv − ȳ_i)², Σ(m_i − 1), Σ(m_i − 1)·mean(1/k) and the number of
 * people with two or more dates.
 */
export const betweenSumsQuery = (model: CohortModel, of: SumsOf = 'everyone'): string => {
  const { all } = model.catalogue;
  const grouped = of === 'groups';
  const inGroup = (id: string): string => (grouped ? ` AND lo_${id} = n.group_name AND hi_${id} = n.group_name` : '');
  return `WITH member_values AS (
  SELECT s.client_key, s.visit_purpose, s.start_day, ${grouped ? "COALESCE(g.group_name, '') AS group_name, " : ''}${all
    .map(
      (measure) =>
        `${member(measure, model)} AS ${measure.id}, ${reciprocal(`v.${model.bases.of(measure).column}`)} AS ik_${measure.id}`,
    )
    .join(', ')}
  FROM study_visits AS s JOIN visits AS v ON v.client_key = s.client_key AND v.visit_no = s.visit_no
  ${grouped ? 'LEFT JOIN visit_groups AS g ON g.client_key = s.client_key AND g.visit_no = s.visit_no' : ''}
),
centred AS (
  SELECT client_key, visit_purpose, start_day, ${grouped ? 'group_name, ' : ''}${all
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
        `COUNT(${id}) AS m_${id}, SUM((${id} - mean_${id}) * (${id} - mean_${id})) AS ss_${id}, AVG(ik_${id}) AS ik_${id}${grouped ? `, ${groupBounds(id)}` : ''}`,
    )
    .join(', ')}
  FROM centred GROUP BY client_key, visit_purpose, start_day
)
SELECT ${grouped ? 'n.group_name, ' : ''}${all
    .map(
      ({ id }) => `SUM(CASE WHEN m_${id} >= 2${inGroup(id)} THEN ss_${id} END) AS ss_${id},
  CAST(SUM(CASE WHEN m_${id} >= 2${inGroup(id)} THEN m_${id} - 1 END) AS DOUBLE PRECISION) AS df_${id},
  SUM(CASE WHEN m_${id} >= 2${inGroup(id)} THEN (m_${id} - 1) * ik_${id} END) AS ik_${id},
  COUNT(DISTINCT CASE WHEN m_${id} >= 2${inGroup(id)} THEN client_key END) AS people_${id}`,
    )
    .join(',\n  ')}
FROM ${
    grouped
      ? '(SELECT DISTINCT group_name FROM visit_groups) AS n CROSS JOIN clusters GROUP BY n.group_name ORDER BY n.group_name'
      : 'clusters'
  }`;
};
