import type { CohortModel } from '../model';

/**
 * Enrolments, as the readings and the enrolment tables state them, with their baseline: the last visit in [start − 30 days, start], else the first in (start, start + 7 days]
 * (late), without a start the first visit; by date alone, unless a person chose another visit. `latest_<basis>` is the last visit on a later day, up to the
 * end of the program or as-of, that holds the basis. Clients without any program stand under the check-ups. What the
 * clinic entered of an enrolment goes before what files say of the same client, program and start. Whether a change of
 * weight is intended is what was said last for that client and program.
 */
export const enrolmentsStatements = ({ bases }: CohortModel): readonly string[] => [
  `CREATE OR REPLACE TABLE enrolments AS
WITH statements AS (
  SELECT r.client_key, r.program, r.program_start, r.program_end, r.end_reason, 0 AS kept
  FROM readings AS r CROSS JOIN params AS p
  WHERE r.program IS NOT NULL AND r.visit_date <= p.as_of
  UNION ALL
  SELECT e.client_key, e.program, e.program_start, e.program_end, e.end_reason, 0
  FROM enrolment_rows AS e JOIN clients AS c ON c.client_key = e.client_key CROSS JOIN params AS p
  WHERE e.program_start IS NULL OR e.program_start <= p.as_of
  UNION ALL
  SELECT c.client_key, k.program, k.program_start, k.program_end, k.end_reason, 1
  FROM kept_enrolments AS k JOIN clients AS c ON c.client_id = k.client_id CROSS JOIN params AS p
  WHERE k.program_start IS NULL OR k.program_start <= p.as_of
),
stated AS (
  SELECT client_key, program, program_start, MAX(kept) AS kept,
    CASE WHEN MAX(kept) = 1 THEN MAX(CASE WHEN kept = 1 THEN program_end END) ELSE MAX(program_end) END AS program_end,
    CASE WHEN MAX(kept) = 1 THEN MAX(CASE WHEN kept = 1 THEN end_reason END) ELSE MAX(end_reason) END AS end_reason
  FROM statements GROUP BY client_key, program, program_start
),
dated AS (
  SELECT s.*, COUNT(s.program_start) OVER whole AS starts, MAX(s.program_start) OVER whole AS last_start,
    MAX(CASE WHEN s.program_start IS NULL THEN s.program_end END) OVER whole AS loose_end,
    MAX(CASE WHEN s.program_start IS NULL THEN s.end_reason END) OVER whole AS loose_reason
  FROM stated AS s WINDOW whole AS (PARTITION BY s.client_key, s.program)
),
listed AS (
  SELECT client_key, program, program_start,
    COALESCE(program_end, CASE WHEN kept = 0 AND program_start = last_start AND loose_end >= program_start THEN loose_end END) AS program_end,
    COALESCE(end_reason, CASE WHEN kept = 0 AND program_start = last_start THEN loose_reason END) AS end_reason
  FROM dated
  WHERE program_start IS NOT NULL OR starts = 0
  UNION ALL
  SELECT c.client_key, p.check_ups, CAST(NULL AS DATE), CAST(NULL AS DATE), CAST(NULL AS TEXT)
  FROM clients AS c CROSS JOIN params AS p
  WHERE NOT EXISTS (SELECT 1 FROM stated AS s WHERE s.client_key = c.client_key)
),
intentions AS (
  SELECT s.client_key, s.program, s.weight_change_intended, ROW_NUMBER() OVER (
    PARTITION BY s.client_key, s.program ORDER BY s.said_on DESC NULLS LAST, s.said_no DESC NULLS LAST) AS place
  FROM (
    SELECT r.client_key, COALESCE(r.program, p.check_ups) AS program, r.weight_change_intended, r.visit_date AS said_on, r.reading_key AS said_no
    FROM readings AS r CROSS JOIN params AS p WHERE r.weight_change_intended IS NOT NULL AND r.visit_date <= p.as_of
    UNION ALL
    SELECT e.client_key, COALESCE(e.program, p.check_ups), e.weight_change_intended, e.program_start, e.enrolment_row
    FROM enrolment_rows AS e CROSS JOIN params AS p WHERE e.weight_change_intended IS NOT NULL
  ) AS s
),
numbered AS (
  SELECT l.*, CAST(ROW_NUMBER() OVER (ORDER BY l.client_key, l.program_start NULLS FIRST, l.program) AS INTEGER) AS enrolment_no
  FROM listed AS l
),
series AS (SELECT client_key, visit_no, visit_date FROM visits WHERE in_series = 1),
candidates AS (
  SELECT n.enrolment_no,
    MAX(CASE WHEN s.visit_date BETWEEN n.program_start - 30 AND n.program_start THEN s.visit_no END) AS on_time_no,
    MIN(CASE WHEN s.visit_date > n.program_start AND s.visit_date <= n.program_start + 7 THEN s.visit_no END) AS late_no,
    MIN(CASE WHEN n.program_start IS NULL THEN s.visit_no END) AS first_no,
    MAX(CASE WHEN s.visit_date = h.visit_date THEN s.visit_no END) AS chosen_no
  FROM numbered AS n
  JOIN series AS s ON s.client_key = n.client_key
  JOIN clients AS k ON k.client_key = n.client_key
  LEFT JOIN chosen_baselines AS h ON h.client_id = k.client_id AND h.program = n.program
    AND (h.program_start = n.program_start OR (h.program_start IS NULL AND n.program_start IS NULL))
  GROUP BY n.enrolment_no
)
SELECT n.*, COALESCE(c.chosen_no, c.on_time_no, c.late_no, c.first_no) AS baseline_no,
  COALESCE(c.on_time_no, c.late_no, c.first_no) AS by_date_no,
  CASE WHEN c.chosen_no IS NULL THEN 0 ELSE 1 END AS baseline_chosen,
  CASE WHEN c.chosen_no IS NULL AND c.on_time_no IS NULL AND c.late_no IS NOT NULL THEN 1 ELSE 0 END AS late_baseline,
  CASE WHEN n.program_end IS NULL OR n.program_end >= p.as_of THEN 1 ELSE 0 END AS active, i.weight_change_intended
FROM numbered AS n LEFT JOIN candidates AS c ON c.enrolment_no = n.enrolment_no
LEFT JOIN intentions AS i ON i.client_key = n.client_key AND i.program = n.program AND i.place = 1 CROSS JOIN params AS p`,
  `CREATE OR REPLACE TABLE enrolment_latest AS
SELECT e.enrolment_no, e.client_key, e.program, e.baseline_no,
  ${bases.list.map((basis) => `MAX(CASE WHEN v.${basis.column} > 0 AND v.visit_date > b.visit_date THEN v.visit_no END) AS latest_${String(basis.index)}`).join(',\n  ')},
  MAX(CASE WHEN v.r_h IS NOT NULL AND v.xc_h IS NOT NULL THEN v.visit_no END) AS latest_vector,
  MAX(CASE WHEN v.ffmi IS NOT NULL THEN v.visit_no END) AS latest_index,
  MAX(v.visit_no) AS latest_no
FROM enrolments AS e
JOIN visits AS v ON v.client_key = e.client_key AND v.in_series = 1
LEFT JOIN visits AS b ON b.client_key = e.client_key AND b.visit_no = e.baseline_no
CROSS JOIN params AS p
WHERE v.visit_date <= COALESCE(e.program_end, p.as_of) AND (e.baseline_no IS NULL OR v.visit_no >= e.baseline_no)
  AND (e.program_start IS NULL OR v.visit_date >= e.program_start - 30)
GROUP BY e.enrolment_no, e.client_key, e.program, e.baseline_no`,
];
