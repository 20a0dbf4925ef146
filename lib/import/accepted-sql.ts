import { CONDITION_COLUMNS } from './columns';

/**
 * Text of `<prefix>accepted`: of every accepted row what the questions about people, sites and the plan's counts look at,
 * read once. The client stands under one id.
 */
export const acceptedStatement = (prefix: string): string => `CREATE OR REPLACE TABLE ${prefix}accepted AS
SELECT s.order_no, f.is_enrolment, COALESCE(a.client, t.client_id) AS client, LOWER(t.family_name) AS family, LOWER(t.given_name) AS given,
  t.v_birth_date AS birth_date, t.v_birth_year AS birth_year, t.v_age_years AS age_years,
  COALESCE(t.v_sex_for_equations, CASE WHEN t.v_sex IN ('F', 'M') THEN t.v_sex END) AS coding,
  t.v_visit_date AS visit_date, t.v_visit_purpose AS visit_purpose, t.site,
  CASE WHEN COALESCE(t.v_height_source, 'measured') = 'measured' THEN t.v_height_cm END AS measured_cm,
  CASE WHEN t.v_r_ohm IS NOT NULL AND t.v_xc_ohm IS NOT NULL THEN 1 ELSE 0 END AS has_impedance,
  ${CONDITION_COLUMNS.map((name) => `CASE WHEN t.v_${name} IS NOT NULL THEN 1 END AS ${name}`).join(', ')}
FROM ${prefix}status AS s
JOIN ${prefix}typed AS t ON t.file_no = s.file_no AND t.line_no = s.line_no AND t.part_no = s.part_no
JOIN ${prefix}files AS f ON f.file_no = s.file_no
LEFT JOIN ${prefix}aliases AS a ON a.id = t.client_id
WHERE s.status = 'accepted'`;
