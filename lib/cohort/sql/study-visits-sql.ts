import type { CohortModel } from '../model';
import type { PairMasks } from '../rules-in-force';
import { rankExpression } from './pairs-sql';
import { brokenByPair } from './rule-masks-sql';

const DAY = "(v.visit_date - CAST('2000-01-01' AS DATE))";

/**
 * `study_visits`: the visits of the between-day study in clusters. Per client and purpose by date, a cluster starts at the first
 * unused visit and takes all visits up to seven days after it. `kept`: strictly comparable with the cluster's first
 * visit, and no program started in the cluster or in the 14 days before it; `guards` of both visits stop single values.
 * Routine visits make clusters of their own, where the clinic switched them on.
 */
export const studyStatements = ({ rules, masks, study }: CohortModel): readonly string[] => {
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
  SELECT v.client_key, v.visit_purpose, v.visit_no, v.visit_date, ${DAY} AS day_no FROM visits AS v
  WHERE v.visit_purpose ${study.includeRoutine ? "IN ('precision', 'routine')" : "= 'precision'"}
),
following AS (
  SELECT marked.*, MIN(day_no) OVER (PARTITION BY client_key, visit_purpose ORDER BY day_no
    RANGE BETWEEN 8 FOLLOWING AND UNBOUNDED FOLLOWING) AS next_start FROM marked
),
starts AS (
  SELECT client_key, visit_purpose, MIN(day_no) AS start_day FROM following GROUP BY client_key, visit_purpose
  UNION
  SELECT f.client_key, f.visit_purpose, f.next_start FROM starts AS s
  JOIN following AS f ON f.client_key = s.client_key AND f.visit_purpose = s.visit_purpose AND f.day_no = s.start_day
  WHERE f.next_start IS NOT NULL
),
clustered AS (
  SELECT f.client_key, f.visit_purpose, f.visit_no, f.visit_date, s.start_day,
    MIN(f.visit_no) OVER (PARTITION BY f.client_key, f.visit_purpose, s.start_day) AS first_no,
    MIN(f.visit_date) OVER (PARTITION BY f.client_key, f.visit_purpose, s.start_day) AS first_date,
    MAX(f.visit_date) OVER (PARTITION BY f.client_key, f.visit_purpose, s.start_day) AS last_date
  FROM following AS f
  JOIN starts AS s ON s.client_key = f.client_key AND s.visit_purpose = f.visit_purpose AND f.day_no BETWEEN s.start_day AND s.start_day + 7
),
paired AS (
  SELECT c.client_key, c.visit_purpose, c.visit_no, c.start_day, c.first_no, c.first_date, c.last_date, ${brokenByPair(rules)} AS together
  FROM clustered AS c
  JOIN visits AS a ON a.client_key = c.client_key AND a.visit_no = c.first_no
  JOIN visits AS b ON b.client_key = c.client_key AND b.visit_no = c.visit_no
)
SELECT x.client_key, x.visit_purpose, x.visit_no, x.first_no, x.start_day, a.guards | b.guards AS guards,
  a.broken | b.broken | x.together AS broken, a.unknown | b.unknown AS unknown,
  ${rank(masks.computed)} AS study_rank, ${rank(masks.exported)} AS study_rank_exported,
  CASE WHEN EXISTS (SELECT 1 FROM enrolments AS e WHERE e.client_key = x.client_key
    AND e.program_start BETWEEN x.first_date - 14 AND x.last_date) THEN 1 ELSE 0 END AS program_started
FROM paired AS x
JOIN visits AS a ON a.client_key = x.client_key AND a.visit_no = x.first_no
JOIN visits AS b ON b.client_key = x.client_key AND b.visit_no = x.visit_no`,
  ];
};
