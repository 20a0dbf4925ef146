const PLACE = 'file_no, line_no, part_no';

const at = (left: string, right: string): string =>
  `${left}.file_no = ${right}.file_no AND ${left}.line_no = ${right}.line_no AND ${left}.part_no = ${right}.part_no`;

/** Two times of day that may be the same: one is unknown, or they are equal. */
const mayBeTheSame = (left: string, right: string): string =>
  `(${left}.visit_time IS NULL OR ${right}.visit_time IS NULL OR ${left}.visit_time = ${right}.visit_time)`;

const findingStatement = (prefix: string): string => `CREATE OR REPLACE TABLE ${prefix}finding AS
SELECT f.file_no, f.line_no, f.part_no, f.client_id, f.visit_date, f.code, f.column_name, f.cell, f.became,
  CASE
    WHEN f.kind <> 'question' THEN f.kind
    WHEN a.decision = 'refuse' THEN 'refused'
    WHEN a.decision = 'keep' OR j.accept_questions = 1 THEN 'warning'
    ELSE 'question'
  END AS kind
FROM ${prefix}found AS f
CROSS JOIN ${prefix}judging AS j
LEFT JOIN ${prefix}answers AS a
  ON a.client = f.client_id AND a.visit_date = f.visit_date AND a.column_name = f.column_name AND a.cell = f.cell`;

/** Every row by itself: erased, refused, held (a question without an answer) or ok, in the order of the files. */
const rowStatement = (prefix: string): string => `CREATE OR REPLACE TABLE ${prefix}row_state AS
WITH verdict AS (
  SELECT ${PLACE}, MAX(CASE WHEN kind = 'refused' THEN 1 ELSE 0 END) AS refused,
    MAX(CASE WHEN kind = 'question' THEN 1 ELSE 0 END) AS held
  FROM ${prefix}finding GROUP BY ${PLACE}
)
SELECT CAST(ROW_NUMBER() OVER (ORDER BY c.file_no, c.line_no, c.part_no) AS INTEGER) AS order_no,
  c.file_no, c.line_no, c.part_no, c.row_hash, c.origin_key, c.same_key, c.number_key, c.figures_key, c.visit_time,
  c.set_aside, c.corrected, CASE WHEN c.set_aside = 1 OR c.corrected = 1 THEN 1 ELSE 0 END AS overlaid,
  CASE WHEN e.id IS NOT NULL THEN 'erased' WHEN v.refused = 1 THEN 'refused' WHEN v.held = 1 THEN 'held' ELSE 'ok' END AS state
FROM ${prefix}cells AS c
LEFT JOIN verdict AS v ON ${at('v', 'c')}
LEFT JOIN ${prefix}erased AS e ON e.id = c.client_id`;

/** Rows equal in every column to a better or an earlier one. A refused row only where the other was corrected by the clinic or came later. */
const copiesStatement = (prefix: string): string => `CREATE OR REPLACE TABLE ${prefix}copies AS
WITH ranked AS (
  SELECT order_no, state, ROW_NUMBER() OVER best AS copy_no, FIRST_VALUE(state) OVER best AS best_state
  FROM ${prefix}row_state WHERE state <> 'erased'
  WINDOW best AS (PARTITION BY row_hash ORDER BY CASE WHEN state = 'refused' THEN 1 ELSE 0 END, overlaid DESC, order_no)
)
SELECT order_no FROM ranked WHERE copy_no > 1 AND (state <> 'refused' OR best_state <> 'refused')`;

/** Rows that a corrected one stands for: `corrects_row` names file, line and part. The best and latest of such rows stays. */
const replacedStatement = (prefix: string): string => `CREATE OR REPLACE TABLE ${prefix}replaced AS
WITH stated AS (
  SELECT s.order_no, REPLACE(SPLIT_PART(c.corrects_row, ':', 1), 'row ', '') AS file_hash,
    TRY_CAST(SPLIT_PART(c.corrects_row, ':', 2) AS INTEGER) AS line_no,
    TRY_CAST(SPLIT_PART(c.corrects_row, ':', 3) AS INTEGER) AS part_no, REGEXP_EXTRACT(c.corrects_row, '^[^:]*:[^:]*:[^:]*:(.*)$', 1) AS table_name
  FROM ${prefix}cells AS c JOIN ${prefix}row_state AS s ON ${at('s', 'c')}
  WHERE c.corrects_row IS NOT NULL AND s.state <> 'erased'
),
aims AS (
  SELECT DISTINCT s.order_no, t.row_hash AS target_hash
  FROM stated AS s
  JOIN ${prefix}files AS f ON SUBSTR(f.sha256, 1, 12) = s.file_hash AND (s.table_name = '' OR s.table_name = f.table_name)
  JOIN ${prefix}row_state AS t ON t.file_no = f.file_no AND t.line_no = s.line_no AND t.part_no = s.part_no AND t.state <> 'erased'
),
members AS (
  SELECT order_no, target_hash FROM aims
  UNION
  SELECT s.order_no, s.row_hash FROM ${prefix}row_state AS s
  WHERE s.state <> 'erased' AND s.row_hash IN (SELECT target_hash FROM aims)
),
ranked AS (
  SELECT m.order_no, ROW_NUMBER() OVER (PARTITION BY m.target_hash ORDER BY
    CASE WHEN c.order_no IS NOT NULL THEN 3 WHEN s.state = 'ok' THEN 0 WHEN s.state = 'held' THEN 1 ELSE 2 END, m.order_no DESC) AS place
  FROM members AS m
  JOIN ${prefix}row_state AS s ON s.order_no = m.order_no
  LEFT JOIN ${prefix}copies AS c ON c.order_no = m.order_no
)
SELECT DISTINCT order_no FROM ranked WHERE place > 1`;

/**
 * Readings that a later file holds again: the later row is taken, unless the clinic corrected or set aside the earlier
 * one. Of several equal readings of a file the first stands for the first, the second for the second.
 */
const supersededStatement = (prefix: string): string => `CREATE OR REPLACE TABLE ${prefix}superseded AS
WITH live AS (
  SELECT s.*, ROW_NUMBER() OVER (PARTITION BY s.file_no, s.same_key ORDER BY s.order_no) AS nth
  FROM ${prefix}row_state AS s
  WHERE s.state <> 'erased' AND s.same_key IS NOT NULL
    AND s.order_no NOT IN (SELECT order_no FROM ${prefix}copies) AND s.order_no NOT IN (SELECT order_no FROM ${prefix}replaced)
),
pairs AS (
  SELECT e.order_no AS earlier, l.order_no AS later, e.overlaid AS earlier_overlaid, l.overlaid AS later_overlaid,
    e.state AS earlier_state, l.state AS later_state
  FROM live AS e
  JOIN live AS l ON l.same_key = e.same_key AND l.nth = e.nth AND l.file_no > e.file_no AND ${mayBeTheSame('e', 'l')}
  UNION ALL
  SELECT e.order_no, l.order_no, e.overlaid, l.overlaid, e.state, l.state
  FROM live AS e
  JOIN live AS l ON l.origin_key = e.origin_key AND l.file_no > e.file_no AND ${mayBeTheSame('e', 'l')}
  WHERE e.corrected = 1 OR l.corrected = 1
)
SELECT DISTINCT CASE WHEN earlier_overlaid = 1 AND later_overlaid = 0 AND earlier_state = 'ok' THEN later ELSE earlier END AS order_no
FROM pairs WHERE later_state = 'ok' OR (earlier_overlaid = 1 AND later_overlaid = 0 AND earlier_state = 'ok')`;

/** Rows that may be one reading: the same figures twice in one file, or one reading number with different figures. */
const twiceStatement = (prefix: string): string => `CREATE OR REPLACE TABLE ${prefix}twice AS
WITH live AS (
  SELECT s.* FROM ${prefix}row_state AS s
  WHERE s.state IN ('ok', 'held') AND s.set_aside = 0
    AND s.order_no NOT IN (SELECT order_no FROM ${prefix}copies) AND s.order_no NOT IN (SELECT order_no FROM ${prefix}replaced)
    AND s.order_no NOT IN (SELECT order_no FROM ${prefix}superseded)
),
figures AS (
  SELECT a.order_no, a.file_no AS group_file, a.same_key AS group_key
  FROM live AS a
  WHERE a.same_key IS NOT NULL AND EXISTS (SELECT 1 FROM live AS b
    WHERE b.same_key = a.same_key AND b.file_no = a.file_no AND b.order_no <> a.order_no AND ${mayBeTheSame('a', 'b')})
),
numbers AS (
  SELECT a.order_no, 0 AS group_file, a.number_key AS group_key
  FROM live AS a
  WHERE a.number_key IN (SELECT number_key FROM live WHERE number_key IS NOT NULL
    GROUP BY number_key HAVING COUNT(DISTINCT figures_key) > 1)
)
SELECT order_no, 'same_figures' AS code, group_file, group_key, ROW_NUMBER() OVER (PARTITION BY group_file, group_key ORDER BY order_no) AS place,
  COUNT(*) OVER (PARTITION BY group_file, group_key) AS size FROM figures
UNION ALL
SELECT order_no, 'same_number', group_file, group_key, ROW_NUMBER() OVER (PARTITION BY group_file, group_key ORDER BY order_no),
  COUNT(*) OVER (PARTITION BY group_file, group_key) FROM numbers`;

/**
 * The question of each such row with a key that stays the same when the file comes again (day, device, number and
 * figures, no line), and its answer: `keep`, `drop` or, without one, `ask` for all but the first.
 */
const questionsStatement = (prefix: string): string => `CREATE OR REPLACE TABLE ${prefix}reading_question AS
WITH described AS (
  SELECT w.*, s.file_no, s.line_no, s.part_no, COALESCE(a.client, t.client_id) AS client, t.visit_date,
    CONCAT_WS('/', COALESCE(t.v_visit_purpose, 'routine'), COALESCE(t.device_id, ''), COALESCE(t.v_frequency_khz, 50E0),
      COALESCE(t.v_side, 'right'), COALESCE(CAST(t.v_reading AS VARCHAR), '')) AS circumstances,
    CONCAT_WS('/', COALESCE(CAST(t.v_r_ohm AS VARCHAR), ''), COALESCE(CAST(t.v_xc_ohm AS VARCHAR), ''),
      COALESCE(CAST(t.v_weight_kg AS VARCHAR), ''), COALESCE(CAST(t.v_ffm_kg AS VARCHAR), ''), COALESCE(CAST(t.v_fm_kg AS VARCHAR), '')) AS figures
  FROM ${prefix}twice AS w
  JOIN ${prefix}row_state AS s ON s.order_no = w.order_no
  JOIN ${prefix}typed AS t ON ${at('t', 's')}
  LEFT JOIN ${prefix}aliases AS a ON a.id = t.client_id
),
keyed AS (
  SELECT d.*, CONCAT(d.code, ' ', MIN(d.circumstances) OVER whole, ' ', STRING_AGG(d.figures, ' ') OVER ordered) AS question_key
  FROM described AS d
  WINDOW whole AS (PARTITION BY d.code, d.group_file, d.group_key),
    ordered AS (PARTITION BY d.code, d.group_file, d.group_key ORDER BY d.figures, d.order_no
      ROWS BETWEEN UNBOUNDED PRECEDING AND UNBOUNDED FOLLOWING)
),
answered AS (
  SELECT k.*, COALESCE(exact.decision, day.decision, CASE WHEN j.accept_questions = 1 THEN 'all' END) AS decision
  FROM keyed AS k
  CROSS JOIN ${prefix}judging AS j
  LEFT JOIN ${prefix}reading_answers AS exact
    ON exact.client = k.client AND exact.visit_date = k.visit_date AND exact.question_key = k.question_key
  LEFT JOIN ${prefix}reading_answers AS day
    ON day.client = k.client AND day.visit_date = k.visit_date AND day.question_key IS NULL
)
SELECT answered.*, CASE decision
    WHEN 'all' THEN 'keep'
    WHEN 'first' THEN CASE WHEN place = 1 THEN 'keep' ELSE 'drop' END
    WHEN 'last' THEN CASE WHEN place = size THEN 'keep' ELSE 'drop' END
    ELSE CASE WHEN place = 1 THEN 'keep' ELSE 'ask' END
  END AS verdict
FROM answered`;

const statusStatement = (prefix: string): string => `CREATE OR REPLACE TABLE ${prefix}status AS
WITH asked AS (
  SELECT order_no, MAX(CASE WHEN verdict = 'drop' THEN 1 ELSE 0 END) AS dropped, MAX(CASE WHEN verdict = 'ask' THEN 1 ELSE 0 END) AS waits,
    MIN(CASE WHEN verdict = 'ask' THEN code END) AS waits_for
  FROM ${prefix}reading_question GROUP BY order_no
),
judged AS (
  SELECT s.order_no, s.file_no, s.line_no, s.part_no, s.row_hash, q.waits_for, CASE
    WHEN s.state = 'erased' THEN 'erased'
    WHEN c.order_no IS NOT NULL THEN 'duplicate'
    WHEN r.order_no IS NOT NULL THEN 'replaced'
    WHEN u.order_no IS NOT NULL THEN 'superseded'
    WHEN s.state = 'refused' THEN 'refused'
    WHEN s.set_aside = 1 THEN 'set-aside'
    WHEN q.dropped = 1 THEN 'not_this_one'
    WHEN s.state = 'held' OR q.waits = 1 THEN 'held'
    ELSE 'accepted'
  END AS code
  FROM ${prefix}row_state AS s
  LEFT JOIN ${prefix}copies AS c ON c.order_no = s.order_no
  LEFT JOIN ${prefix}replaced AS r ON r.order_no = s.order_no
  LEFT JOIN ${prefix}superseded AS u ON u.order_no = s.order_no
  LEFT JOIN asked AS q ON q.order_no = s.order_no
)
SELECT judged.*, CASE WHEN code IN ('replaced', 'superseded', 'not_this_one') THEN 'duplicate' ELSE code END AS status FROM judged`;

/**
 * Texts that decide each row's state in `<prefix>status`, one after the other: erased, duplicate (a copy, replaced by a
 * corrected row, in a later file again, not the reading that counts), refused, set aside, held, else accepted. Answers
 * stand in `<prefix>answers` and `<prefix>reading_answers`. What is only needed on the way is dropped.
 */
export const statusStatements = (prefix: string): readonly string[] => [
  findingStatement(prefix),
  `DROP TABLE ${prefix}found`,
  rowStatement(prefix),
  copiesStatement(prefix),
  replacedStatement(prefix),
  supersededStatement(prefix),
  twiceStatement(prefix),
  questionsStatement(prefix),
  statusStatement(prefix),
  ...['row_state', 'copies', 'replaced', 'superseded', 'twice'].map((table) => `DROP TABLE ${prefix}${table}`),
];
