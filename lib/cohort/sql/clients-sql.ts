/** Completed years from one date to another, by the calendar. */
export const completedYears = (birth: string, at: string): string =>
  `CAST(EXTRACT(YEAR FROM ${at}) - EXTRACT(YEAR FROM ${birth}) - CASE WHEN
  EXTRACT(MONTH FROM ${at}) * 100 + EXTRACT(DAY FROM ${at}) < EXTRACT(MONTH FROM ${birth}) * 100 + EXTRACT(DAY FROM ${birth})
  THEN 1 ELSE 0 END AS INTEGER)`;

/**
 * One row per client: the sex coding of most visits (ties: the first), the birth date of most rows (where there is
 * none, a birth year stands for 1 July), the median of the measured adult heights, one a visit (its first reading's), as series height.
 */
export const clientsStatement = `CREATE OR REPLACE TABLE clients AS
WITH seen AS (
  SELECT r.*, COALESCE(r.birth_date, MAKE_DATE(r.birth_year, 7, 1)) AS birth_ref,
    COALESCE(r.sex_for_equations, CASE WHEN r.sex IN ('F', 'M') THEN r.sex END) AS coding
  FROM readings AS r CROSS JOIN params AS p WHERE r.visit_date <= p.as_of
),
sexes AS (
  SELECT client_key, coding, ROW_NUMBER() OVER (
    PARTITION BY client_key ORDER BY COUNT(DISTINCT visit_date) DESC, MIN(reading_key)) AS place
  FROM seen WHERE coding IS NOT NULL GROUP BY client_key, coding
),
births AS (
  SELECT client_key, birth_ref, ROW_NUMBER() OVER (
    PARTITION BY client_key ORDER BY MIN(CASE WHEN birth_date IS NULL THEN 1 ELSE 0 END), COUNT(*) DESC, MIN(reading_key)) AS place,
    MIN(CASE WHEN birth_date IS NULL THEN birth_year END) AS born_in, MAX(birth_date) AS exact
  FROM seen WHERE birth_ref IS NOT NULL GROUP BY client_key, birth_ref
),
names AS (
  SELECT client_key, MIN(client_id) AS client_id, MAX(family_name) AS family_name, MAX(given_name) AS given_name
  FROM seen GROUP BY client_key
),
known AS (
  SELECT n.client_key, n.client_id, n.family_name, n.given_name,
    COALESCE(a.sex, s.coding) AS sex, COALESCE(a.birth_date, b.birth_ref) AS birth_ref,
    CASE WHEN a.birth_date IS NULL AND b.exact IS NULL THEN b.born_in END AS born_in
  FROM names AS n
  LEFT JOIN sexes AS s ON s.client_key = n.client_key AND s.place = 1
  LEFT JOIN births AS b ON b.client_key = n.client_key AND b.place = 1
  LEFT JOIN client_answers AS a ON a.client_id = n.client_id
),
aged AS (
  SELECT k.client_key, s.reading_key, s.visit_date, s.visit_purpose, s.height_cm,
    CASE WHEN COALESCE(s.height_source, 'measured') = 'measured' THEN s.height_cm END AS measured_cm,
    COALESCE(${completedYears('k.birth_ref', 's.visit_date')}, CAST(FLOOR(s.age_years) AS INTEGER)) AS completed_age
  FROM known AS k JOIN seen AS s ON s.client_key = k.client_key
),
visit_heights AS (
  SELECT client_key, measured_cm, height_cm, ROW_NUMBER() OVER (
    PARTITION BY client_key, visit_date, visit_purpose
    ORDER BY CASE WHEN measured_cm IS NULL THEN 1 ELSE 0 END, reading_key) AS place
  FROM aged WHERE COALESCE(completed_age, 18) >= 18 AND height_cm IS NOT NULL
),
heights AS (
  SELECT client_key, PERCENTILE_CONT(0.5) WITHIN GROUP (ORDER BY measured_cm) AS measured_cm,
    PERCENTILE_CONT(0.5) WITHIN GROUP (ORDER BY height_cm) AS any_cm
  FROM visit_heights WHERE place = 1 GROUP BY client_key
)
SELECT k.*, COALESCE(h.measured_cm, h.any_cm) AS series_height_cm
FROM known AS k LEFT JOIN heights AS h ON h.client_key = k.client_key`;
