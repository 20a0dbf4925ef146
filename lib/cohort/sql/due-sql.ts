import type { CohortModel } from '../model';
import { changeRows } from './change-sql';
import { expectedRows } from './expected-change-sql';

/** Next week's Sunday, in days after Monday. */
const LAST_DAY = 13;
/** A client who missed a planned time this long ago is not invited any more. */
const GONE_DAYS = 84;

/**
 * One row per client of an active program with a planned visit or review that is due by the end of next week and has no
 * visit. The last visit of the series, from 30 days before the start on, serves the planned time that lies nearest to
 * it (ties: the earlier) and all before it; the planned times after that one are open. The row's time is the first
 * open one of this week and next, else the last one before; `missed_from` is the first of all; `gone`: that was missed
 * twelve weeks before as-of. Of several
 * programs the one with something to come for stands first. Beside it how the last visit and the baseline were taken,
 * and the lean value's last change against what the program lets expect.
 */
export const dueQuery = (model: CohortModel): string => {
  const { lean } = model;
  return `WITH ${changeRows(model.catalogue.measure(lean), model)},
${expectedRows('expected', 'change_rows', lean)},
active AS (
  SELECT e.enrolment_no, e.client_key, e.program, e.baseline_no, COALESCE(e.program_start, b.visit_date) AS origin
  FROM enrolments AS e
  LEFT JOIN visits AS b ON b.client_key = e.client_key AND b.visit_no = e.baseline_no
  WHERE e.active = 1
),
last_visits AS (
  SELECT client_key, MAX(visit_no) AS last_no FROM visits WHERE in_series = 1 GROUP BY client_key
),
times AS (
  SELECT a.enrolment_no, a.client_key, t.week, t.due_day, t.window_days, a.origin + t.due_day AS due_date,
    CASE WHEN v.visit_date >= a.origin - 30 THEN ABS(a.origin + t.due_day - v.visit_date) END AS distance
  FROM active AS a
  JOIN planned_times AS t ON t.program = a.program
  LEFT JOIN last_visits AS l ON l.client_key = a.client_key
  LEFT JOIN visits AS v ON v.client_key = l.client_key AND v.visit_no = l.last_no
),
served AS (
  SELECT enrolment_no, due_day, ROW_NUMBER() OVER (PARTITION BY enrolment_no ORDER BY distance, due_day) AS place
  FROM times WHERE distance IS NOT NULL
),
open_times AS (
  SELECT t.*, MIN(t.due_date) OVER (PARTITION BY t.enrolment_no) AS missed_from,
    ROW_NUMBER() OVER (PARTITION BY t.enrolment_no ORDER BY CASE WHEN t.due_date >= p.monday THEN 0 ELSE 1 END,
      CASE WHEN t.due_date >= p.monday THEN t.due_day ELSE -t.due_day END) AS place
  FROM times AS t
  LEFT JOIN served AS s ON s.enrolment_no = t.enrolment_no AND s.place = 1
  CROSS JOIN params AS p
  WHERE (s.due_day IS NULL OR t.due_day > s.due_day) AND t.due_date <= p.monday + ${String(LAST_DAY)}
),
judged AS (
  SELECT o.*, CASE WHEN p.as_of - o.missed_from >= ${String(GONE_DAYS)} THEN 1 ELSE 0 END AS gone
  FROM open_times AS o CROSS JOIN params AS p WHERE o.place = 1
),
chosen AS (
  SELECT j.*, ROW_NUMBER() OVER (PARTITION BY j.client_key ORDER BY j.gone, j.due_date, j.enrolment_no) AS turn
  FROM judged AS j
),
implants AS (
  SELECT r.client_key, MAX(r.implanted_device) AS implant FROM readings AS r CROSS JOIN params AS p
  WHERE r.visit_date <= p.as_of GROUP BY r.client_key
)
SELECT j.client_key, c.client_id, c.family_name, c.given_name, c.series_height_cm, a.program, j.week, j.due_date,
  j.due_date + j.window_days AS window_to, j.missed_from, j.gone, p.monday, i.implant,
  v.visit_date AS last_date, v.site, v.device, v.electrode_position, v.posture, v.side, v.broken, v.unknown, v.guards, v.on_dialysis, v.hours_since_dialysis,
  b.device AS baseline_device, b.electrode_position AS baseline_position, b.posture AS baseline_posture, b.side AS baseline_side,
  b.visit_no AS baseline_no, r.change, r.lsc, r.result_code, COALESCE(x.per_kg, 0E0) AS per_kg, COALESCE(x.over_time, 0E0) AS over_time,
  bb.weight - ba.weight AS weight_change
FROM chosen AS j
JOIN active AS a ON a.enrolment_no = j.enrolment_no
JOIN clients AS c ON c.client_key = j.client_key
LEFT JOIN implants AS i ON i.client_key = j.client_key
LEFT JOIN last_visits AS l ON l.client_key = j.client_key
LEFT JOIN visits AS v ON v.client_key = l.client_key AND v.visit_no = l.last_no
LEFT JOIN visits AS b ON b.client_key = a.client_key AND b.visit_no = a.baseline_no
LEFT JOIN change_rows AS r ON r.enrolment_no = j.enrolment_no AND r.to_no = l.last_no
LEFT JOIN expected AS x ON x.enrolment_no = r.enrolment_no AND x.from_date = r.from_date AND x.to_date = r.to_date
LEFT JOIN visits AS ba ON ba.client_key = r.client_key AND ba.visit_no = r.from_no
LEFT JOIN visits AS bb ON bb.client_key = r.client_key AND bb.visit_no = r.to_no
CROSS JOIN params AS p
CROSS JOIN filter AS f
WHERE j.turn = 1 AND (f.program IS NULL OR a.program = f.program) AND (f.site IS NULL OR v.site = f.site)
  AND (f.sex IS NULL OR c.sex = f.sex) AND (f.age_from IS NULL OR v.completed_age >= f.age_from)
  AND (f.age_to IS NULL OR v.completed_age <= f.age_to)
ORDER BY j.due_date, c.client_id`;
};
