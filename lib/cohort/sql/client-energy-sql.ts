import type { Equation } from '../../measures/equation';
import { guardBit } from '../../measures/guard';
import { outsideConditions } from './outside-equation-sql';

const VISIT = `v.visit_no, v.visit_date, v.guards, v.weight, v.height_cm, v.sex, v.completed_age, v.bmi, v.waist, v.waist_height,
  COALESCE(CAST(v.visit_date - c.birth_ref AS DOUBLE PRECISION) / 365.25E0, CAST(v.completed_age AS DOUBLE PRECISION)) AS age_years`;

const latestWith = (column: string, columns: string): string => `SELECT ${columns}
FROM visits AS v
JOIN clients AS c ON c.client_key = v.client_key
CROSS JOIN filter AS f
WHERE v.client_key = f.client_key AND v.in_series = 1 AND v.${column} IS NOT NULL
ORDER BY v.visit_no DESC NULLS LAST LIMIT 1`;

/** The client's latest visit with a weight, with what an equation for energy needs and where it lies outside its group. */
export const energyVisitQuery = (equation: Equation): string => {
  const outside = outsideConditions(equation, 'v')
    .map(({ code, when }) => `(CASE WHEN ${when} THEN ${String(guardBit(code))} ELSE 0 END)`)
    .join(' | ');
  return latestWith('weight', `${VISIT}, v.ffm, v.fm, ${outside === '' ? '0' : outside} AS outside`);
};

/** The client's latest visit with a waist. */
export const waistVisitQuery = latestWith('waist', VISIT);

/** The latest recorded physical activity level of the client. */
export const activityQuery = `SELECT r.pal, r.visit_date FROM readings AS r CROSS JOIN filter AS f CROSS JOIN params AS p
WHERE r.client_key = f.client_key AND r.pal IS NOT NULL AND r.visit_date <= p.as_of
ORDER BY r.visit_date DESC NULLS LAST, r.reading_key DESC NULLS LAST LIMIT 1`;
