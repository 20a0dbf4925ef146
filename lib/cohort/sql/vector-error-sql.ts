import type { CohortModel } from '../model';
import { member } from './precision-sql';
import { reciprocal } from './reciprocal';

const products = (x: string, y: string): string =>
  `SUM(${x} * ${x}) AS sxx, SUM(${x} * ${y}) AS sxy, SUM(${y} * ${y}) AS syy`;

/**
 * Sums for the repositioning error of a vector (x = R/H, y = Xc/H), one row: Σ over visits with two or more readings that
 * hold both of squares and products of the deviations from the visit's mean, Σ(k − 1), and the number of people.
 */
export const vectorWithinQuery = `WITH vector_readings AS (
  SELECT r.client_key, r.visit_date, r.visit_purpose, r.device, r.r_h AS x, r.xc_h AS y
  FROM reading_values AS r
  WHERE r.r_h IS NOT NULL AND r.xc_h IS NOT NULL AND r.frequency_khz = 50E0 AND r.visit_purpose <> 'crosscheck'
),
centred AS (
  SELECT client_key, visit_date, visit_purpose, device, COUNT(*) OVER visit AS k,
    x - AVG(x) OVER visit AS dx, y - AVG(y) OVER visit AS dy
  FROM vector_readings WINDOW visit AS (PARTITION BY client_key, visit_date, visit_purpose, device)
)
SELECT ${products('dx', 'dy')}, SUM(CAST(k - 1 AS DOUBLE PRECISION) / NULLIF(k, 0)) AS df,
  COUNT(DISTINCT client_key) AS people
FROM centred WHERE k >= 2`;

/**
 * Sums for its between-day error over the clusters of the error study, one row: squares and products of the deviations of
 * visit means from the cluster's, Σ(m − 1), Σ(m − 1)·mean(1/k) and the number of people.
 */
export const vectorBetweenQuery = (model: CohortModel): string => {
  const [x, y] = [model.catalogue.measure('r_h'), model.catalogue.measure('xc_h')];
  const k = `CAST(${reciprocal(`v.${model.bases.of(x).column}`)} AS DOUBLE PRECISION)`;
  return `WITH members AS (
  SELECT s.client_key, s.visit_purpose, s.start_day, ${k} AS ik, ${member(x, model)} AS x, ${member(y, model)} AS y
  FROM study_visits AS s JOIN visits AS v ON v.client_key = s.client_key AND v.visit_no = s.visit_no
  WHERE v.frequency_khz = 50E0
),
centred AS (
  SELECT client_key, ik, COUNT(*) OVER cluster AS m, x - AVG(x) OVER cluster AS dx, y - AVG(y) OVER cluster AS dy
  FROM members WHERE x IS NOT NULL AND y IS NOT NULL
  WINDOW cluster AS (PARTITION BY client_key, visit_purpose, start_day)
)
SELECT ${products('dx', 'dy')}, SUM(CAST(m - 1 AS DOUBLE PRECISION) / NULLIF(m, 0)) AS df,
  SUM(CAST(m - 1 AS DOUBLE PRECISION) / NULLIF(m, 0) * ik) AS ik, COUNT(DISTINCT client_key) AS people
FROM centred WHERE m >= 2`;
};
