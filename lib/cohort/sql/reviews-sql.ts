import { isExported } from '../is-exported';
import type { Measure } from '../../measures/measure';
import type { CohortModel } from '../model';
import { purposeNumber } from '../purpose-number';

/** 2²⁰, more than any client's visits: a code orders by distance first, and its lower bits are the visit. */
const PLACES = 1_048_576;
/** A late baseline may lie this many days after the start: no visit is baseline and review at once. */
const BASELINE_DAYS = 7;

/**
 * `review_windows`: one row per enrolment and planned review of its program. The target lies `review_week` weeks after the
 * start (after the first visit where no start is known), the window `window_weeks` on either side.
 * `review_visits`: the visits of each window. All visits of the series take part, whatever their conditions and whichever
 * visit is the baseline; a visit inside two windows belongs to the nearer target, ties to the earlier.
 * `reviews`: the windows with `seen_<basis>`, the closest visit that holds the basis, ties to the earlier visit;
 * `first_<basis>` the earliest; `seen_no` the closest of all. `due`: the window has closed by as-of and the program had not
 * ended before it opened.
 */
export const reviewsStatements = ({ bases }: CohortModel): readonly string[] => {
  const closest = (where: string): string =>
    `CAST(MIN(CASE WHEN ${where} THEN CAST(i.distance AS BIGINT) * ${String(PLACES)} + i.visit_no END) & ${String(PLACES - 1)} AS INTEGER)`;
  return [
    `CREATE OR REPLACE TABLE review_windows AS
WITH planned AS (
  SELECT e.enrolment_no, e.client_key, e.program, e.baseline_no, e.program_end, r.review_week, r.window_weeks, r.target_day,
    r.window_days, COALESCE(e.program_start, b.visit_date) AS origin
  FROM enrolments AS e
  JOIN planned_reviews AS r ON r.program = e.program
  LEFT JOIN visits AS b ON b.client_key = e.client_key AND b.visit_no = e.baseline_no
)
SELECT p.enrolment_no, p.client_key, p.program, p.baseline_no, p.review_week, p.window_weeks, p.target_day, p.origin,
  p.origin + p.target_day AS target_date, p.origin + p.target_day - p.window_days AS window_from,
  p.origin + p.target_day + p.window_days AS window_to,
  CASE WHEN p.program_end < p.origin + p.target_day - p.window_days THEN 1 ELSE 0 END AS ended_before
FROM planned AS p WHERE p.origin IS NOT NULL`,
    `CREATE OR REPLACE TABLE review_visits AS
WITH inside AS (
  SELECT w.enrolment_no, w.review_week, v.visit_no, ABS(v.visit_date - w.target_date) AS distance,
    ${bases.list.map(({ column }) => `v.${column}`).join(', ')},
    ROW_NUMBER() OVER (PARTITION BY w.enrolment_no, v.visit_no ORDER BY ABS(v.visit_date - w.target_date), w.target_day) AS place
  FROM review_windows AS w
  JOIN visits AS v ON v.client_key = w.client_key AND v.in_series = 1 AND v.visit_date BETWEEN w.window_from AND w.window_to
    AND v.visit_date > w.origin + ${String(BASELINE_DAYS)}
)
SELECT i.enrolment_no, i.review_week, i.visit_no, i.distance, ${bases.list.map(({ column }) => `i.${column}`).join(', ')}
FROM inside AS i WHERE i.place = 1`,
    `CREATE OR REPLACE TABLE reviews AS
WITH found AS (
  SELECT i.enrolment_no, i.review_week, CAST(COUNT(*) AS INTEGER) AS in_window, ${closest('TRUE')} AS seen_no,
    ${bases.list
      .map(
        ({ index, column }) =>
          `${closest(`i.${column} > 0`)} AS seen_${String(index)}, MIN(CASE WHEN i.${column} > 0 THEN i.visit_no END) AS first_${String(index)}, CAST(COUNT(*) FILTER (WHERE i.${column} > 0) AS INTEGER) AS holding_${String(index)}`,
      )
      .join(',\n    ')}
  FROM review_visits AS i GROUP BY i.enrolment_no, i.review_week
)
SELECT w.*, CASE WHEN w.window_to <= p.as_of AND w.ended_before = 0 THEN 1 ELSE 0 END AS due,
  COALESCE(f.in_window, 0) AS in_window, f.seen_no,
  ${bases.list.map(({ index }) => `f.seen_${String(index)}, f.first_${String(index)}, COALESCE(f.holding_${String(index)}, 0) AS holding_${String(index)}`).join(', ')}
FROM review_windows AS w
LEFT JOIN found AS f ON f.enrolment_no = w.enrolment_no AND f.review_week = w.review_week
CROSS JOIN params AS p`,
    'DROP TABLE review_windows',
  ];
};

/**
 * The CTE text `review_rows` for one value under the filter: state, the visit that the filter's rule takes, how many of the window's
 * visits were passed over because they do not hold the value, and the grade of the pair with the baseline. People are
 * filtered by their latest visit of the enrolment.
 */
const reviewRows = (measure: Measure, model: CohortModel): string => {
  const basis = model.bases.of(measure);
  const index = String(basis.index);
  const best = String(purposeNumber('baseline-review', 'closest-comparable'));
  const first = String(purposeNumber('baseline-review', 'first-in-window'));
  return `review_rows AS (
  SELECT w.enrolment_no, w.client_key, c.client_id, w.program, w.review_week, w.window_weeks, w.origin, w.target_date,
    w.window_from, w.window_to, s.visit_date AS seen_date, s.visit_date - w.origin AS actual_day,
    w.in_window - w.holding_${index} AS passed_over,
    CASE WHEN w.ended_before = 1 THEN 'ended-before' WHEN w.due = 1 AND w.seen_${index} IS NOT NULL THEN 'seen'
      WHEN w.due = 1 THEN 'not-seen' WHEN w.seen_${index} IS NOT NULL THEN 'seen-early' ELSE 'not-yet' END AS state,
    q.${isExported(measure) ? 'pair_rank_exported' : 'pair_rank'} AS pair_rank, f.rank_limit
  FROM reviews AS w
  JOIN clients AS c ON c.client_key = w.client_key
  CROSS JOIN filter AS f
  LEFT JOIN pairs AS q ON q.purpose = f.purpose AND q.client_key = w.client_key AND q.enrolment_no = w.enrolment_no AND q.review_week = w.review_week
    AND q.bases & ${String(1 << basis.index)} <> 0
  LEFT JOIN visits AS s ON s.client_key = w.client_key AND w.ended_before = 0 AND s.visit_no = CASE f.purpose
    WHEN ${first} THEN w.first_${index} WHEN ${best} THEN COALESCE(q.to_no, w.seen_${index}) ELSE w.seen_${index} END
  LEFT JOIN enrolment_latest AS l ON l.enrolment_no = w.enrolment_no
  LEFT JOIN visits AS v ON v.client_key = l.client_key AND v.visit_no = l.latest_no
  WHERE (f.program IS NULL OR w.program = f.program) AND (f.site IS NULL OR v.site = f.site)
    AND (f.sex IS NULL OR c.sex = f.sex) AND (f.age_from IS NULL OR v.completed_age >= f.age_from)
    AND (f.age_to IS NULL OR v.completed_age <= f.age_to) AND (f.review_week IS NULL OR w.review_week = f.review_week)
    AND (f.client_key IS NULL OR w.client_key = f.client_key)
)`;
};

/** Every enrolment's planned reviews, by client, program and week. */
export const reviewRowsQuery = (measure: Measure, model: CohortModel): string => `WITH ${reviewRows(measure, model)}
SELECT * FROM review_rows ORDER BY client_id, program, origin, review_week, enrolment_no`;

const count = (when: string, name: string): string => `COUNT(*) FILTER (WHERE ${when}) AS ${name}`;

/** Counts per program and planned review, and quartiles (type 7) of the day on which those seen were seen. */
export const reviewCountsQuery = (measure: Measure, model: CohortModel): string => {
  const quartile = (p: string): string =>
    `PERCENTILE_CONT(${p}) WITHIN GROUP (ORDER BY CASE WHEN state = 'seen' THEN CAST(actual_day AS DOUBLE PRECISION) END)`;
  return `WITH ${reviewRows(measure, model)}
SELECT program, review_week, window_weeks, ${[
    count("state IN ('seen', 'not-seen')", 'n_due'),
    count("state = 'seen'", 'n_seen'),
    count("state = 'seen' AND pair_rank IS NOT NULL", 'n_pairs'),
    count("state = 'seen' AND pair_rank <= rank_limit", 'n_comparable'),
    count("state = 'seen-early'", 'n_seen_early'),
    count("state = 'not-yet'", 'n_not_yet'),
    count("state = 'ended-before'", 'n_ended_before'),
  ].join(', ')},
  SUM(CASE WHEN state IN ('seen', 'not-seen') THEN passed_over ELSE 0 END) AS passed_over,
  ${quartile('0.25')} AS day_q1, ${quartile('0.5')} AS day_median, ${quartile('0.75')} AS day_q3
FROM review_rows GROUP BY program, review_week, window_weeks ORDER BY program, review_week, window_weeks`;
};
