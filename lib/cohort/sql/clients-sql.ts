/** Completed years from one date to another, by the calendar. */
export const completedYears = (birth: string, at: string): string =>
  `CAST(EXTRACT(YEAR FROM ${at}) - EXTRACT(YEAR FROM ${birth}) - CASE WHEN
  EXTRACT(MONTH FROM ${at}) * 100 + EXTRACT(DAY FROM ${at}) < EXTRACT(MONTH FROM ${birth}) * 100 + EXTRACT(DAY FROM ${birth})
  THEN 1 ELSE 0 END AS INTEGER)`;

/**
 * One row per client: the sex coding of most visits (ties: the first), the birth date of most rows (where there is
 * none, a birth year stands for 1 July), the median of the measured adult heights, one a visit (its first reading's), as series height. What the readings leave empty
 * about a person the enrolment tables fill.
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
enrolled AS (
  SELECT e.client_key, MAX(e.family_name) AS family_name, MAX(e.given_name) AS given_name,
    MIN(e.birth_date) AS birth_date, MIN(e.birth_year) AS birth_year
  FROM enrolment_rows AS e GROUP BY e.client_key
),
enrolled_sexes AS (
  SELECT e.client_key, COALESCE(e.sex_for_equations, e.sex) AS coding, ROW_NUMBER() OVER (
    PARTITION BY e.client_key ORDER BY COUNT(*) DESC, MIN(e.enrolment_row)) AS place
  FROM enrolment_rows AS e WHERE COALESCE(e.sex_for_equations, e.sex) IN ('F', 'M')
  GROUP BY e.client_key, COALESCE(e.sex_for_equations, e.sex)
),
known AS (
  SELECT n.client_key, n.client_id, COALESCE(n.family_name, e.family_name) AS family_name,
    COALESCE(n.given_name, e.given_name) AS given_name, COALESCE(a.sex, s.coding, es.coding) AS sex,
    COALESCE(a.birth_date, b.exact, e.birth_date, b.birth_ref, MAKE_DATE(e.birth_year, 7, 1)) AS birth_ref,
    CASE WHEN COALESCE(a.birth_date, b.exact, e.birth_date) IS NULL THEN COALESCE(b.born_in, e.birth_year) END AS born_in
  FROM names AS n
  LEFT JOIN sexes AS s ON s.client_key = n.client_key AND s.place = 1
  LEFT JOIN births AS b ON b.client_key = n.client_key AND b.place = 1
  LEFT JOIN enrolled AS e ON e.client_key = n.client_key
  LEFT JOIN enrolled_sexes AS es ON es.client_key = n.client_key AND es.place = 1
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
