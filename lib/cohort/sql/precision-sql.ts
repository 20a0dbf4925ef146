import { guardMask } from '../../measures/guard';
import type { Measure } from '../../measures/measure';
import { isExported } from '../is-exported';
import type { CohortModel } from '../model';
import type { PairMasks } from '../rules-in-force';
import { rankExpression } from './pairs-sql';
import { reciprocal } from './reciprocal';
import { brokenByPair } from './rule-masks-sql';
import { outsidePath } from './outside-equation-sql';

const DAY = "(v.visit_date - CAST('2000-01-01' AS DATE))";

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

/**
 * `study_visits`: the visits of the between-day study in clusters. Per client by date, a cluster starts at the first
 * unused visit and takes all visits up to seven days after it. `kept`: strictly comparable with the cluster's first
 * visit, and no program started in the cluster or in the 14 days before it; `guards` of both visits stop single values.
 */
export const studyStatements = ({ rules, masks }: CohortModel): readonly string[] => {
  const rank = (graded: PairMasks): string =>
    rankExpression(
      '(a.broken | b.broken | x.together)',
      '(a.unknown | b.unknown)',
      '(a.by_procedure | b.by_procedure)',
      graded,
    );
  return [
    `CREATE OR REPLACE TABLE study_visits AS
WITH RECURSIVE marked AS (
  SELECT v.client_key, v.visit_no, v.visit_date, ${DAY} AS day_no FROM visits AS v WHERE v.visit_purpose = 'precision'
),
following AS (
  SELECT marked.*, MIN(day_no) OVER (PARTITION BY client_key ORDER BY day_no
    RANGE BETWEEN 8 FOLLOWING AND UNBOUNDED FOLLOWING) AS next_start FROM marked
),
starts AS (
  SELECT client_key, MIN(day_no) AS start_day FROM following GROUP BY client_key
  UNION
  SELECT f.client_key, f.next_start FROM starts AS s
  JOIN following AS f ON f.client_key = s.client_key AND f.day_no = s.start_day
  WHERE f.next_start IS NOT NULL
),
clustered AS (
  SELECT f.client_key, f.visit_no, f.visit_date, s.start_day,
    MIN(f.visit_no) OVER (PARTITION BY f.client_key, s.start_day) AS first_no,
    MIN(f.visit_date) OVER (PARTITION BY f.client_key, s.start_day) AS first_date,
    MAX(f.visit_date) OVER (PARTITION BY f.client_key, s.start_day) AS last_date
  FROM following AS f
  JOIN starts AS s ON s.client_key = f.client_key AND f.day_no BETWEEN s.start_day AND s.start_day + 7
),
paired AS (
  SELECT c.client_key, c.visit_no, c.start_day, c.first_no, c.first_date, c.last_date, ${brokenByPair(rules)} AS together
  FROM clustered AS c
  JOIN visits AS a ON a.client_key = c.client_key AND a.visit_no = c.first_no
  JOIN visits AS b ON b.client_key = c.client_key AND b.visit_no = c.visit_no
)
SELECT x.client_key, x.visit_no, x.start_day, a.guards | b.guards AS guards,
  ${rank(masks.computed)} AS study_rank, ${rank(masks.exported)} AS study_rank_exported,
  CASE WHEN EXISTS (SELECT 1 FROM enrolments AS e WHERE e.client_key = x.client_key
    AND e.program_start BETWEEN x.first_date - 14 AND x.last_date) THEN 1 ELSE 0 END AS program_started
FROM paired AS x
JOIN visits AS a ON a.client_key = x.client_key AND a.visit_no = x.first_no
JOIN visits AS b ON b.client_key = x.client_key AND b.visit_no = x.visit_no`,
  ];
};

const member = (measure: Measure, model: CohortModel): string =>
  `CASE WHEN s.program_started = 0 AND s.${isExported(measure) ? 'study_rank_exported' : 'study_rank'} <= 1
    AND s.guards & ${String(guardMask(model.guards(measure).stop))} = 0
    AND NOT (${outsidePath(measure, 'v')}) THEN v.${measure.id} END`;

/**
 * Sums for the between-day error, one row: per value Σ(ȳ_iv − ȳ_i)², Σ(m_i − 1), Σ(m_i − 1)·mean(1/k) and the number of
 * people with two or more dates.
 */
export const betweenSumsQuery = (model: CohortModel): string => {
  const { all } = model.catalogue;
  return `WITH member_values AS (
  SELECT s.client_key, s.start_day, ${all
    .map(
      (measure) =>
        `${member(measure, model)} AS ${measure.id}, ${reciprocal(`v.${model.bases.of(measure).column}`)} AS ik_${measure.id}`,
    )
    .join(', ')}
  FROM study_visits AS s JOIN visits AS v ON v.client_key = s.client_key AND v.visit_no = s.visit_no
),
centred AS (
  SELECT client_key, start_day, ${all
    .map(
      ({ id }) =>
        `${id}, CASE WHEN ${id} IS NOT NULL THEN ik_${id} END AS ik_${id}, AVG(${id}) OVER cluster AS mean_${id}`,
    )
    .join(', ')}
  FROM member_values WINDOW cluster AS (PARTITION BY client_key, start_day)
),
clusters AS (
  SELECT client_key, ${all
    .map(
      ({ id }) =>
        `COUNT(${id}) AS m_${id}, SUM((${id} - mean_${id}) * (${id} - mean_${id})) AS ss_${id}, AVG(ik_${id}) AS ik_${id}`,
    )
    .join(', ')}
  FROM centred GROUP BY client_key, start_day
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
