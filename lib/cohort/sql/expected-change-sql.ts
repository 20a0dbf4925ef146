import type { AnyMeasureId } from '../../measures/measure-id';

/** Days of a month, as in every rate per month. */
const MONTH_DAYS = '30.4375E0';

/**
 * The CTE text `<name>`: what program and phase let expect of a value's change, per enrolment and later visit. `source`
 * is a table or CTE with enrolment_no, from_date and to_date. Columns: per_kg (of the value's unit per kilogram of the
 * change of weight between the two visits) and over_time (in the value's unit): expected = per_kg · ΔW + over_time.
 *
 * Days count from the program's start, or from the earlier visit where no start is known; what lies before the start
 * counts as the start. A pair of visits that spans several phases is weighted by time: each phase's per-kilogram figure
 * by its share of the days between the visits, as if weight changed evenly in between; each phase's per-month figure by
 * its own days. Days in no phase let expect nothing. Where a client's change of weight is said not to be intended,
 * the per-kilogram figures do not hold: the program's expectation rests on intending it.
 */
export const expectedRows = (name: string, source: string, measure: AnyMeasureId): string => `${name}_days AS (
  SELECT q.enrolment_no, q.from_date, q.to_date, e.program, e.weight_change_intended,
    GREATEST(q.from_date - COALESCE(e.program_start, q.from_date), 0) AS from_day,
    GREATEST(q.to_date - COALESCE(e.program_start, q.from_date), 0) AS to_day
  FROM ${source} AS q JOIN enrolments AS e ON e.enrolment_no = q.enrolment_no
),
${name} AS (
  SELECT d.enrolment_no, d.from_date, d.to_date,
    SUM((CASE WHEN d.weight_change_intended = 0 THEN 0E0 ELSE x.per_kg END) * (CASE
      WHEN d.to_day > d.from_day THEN CAST(GREATEST(LEAST(d.to_day, COALESCE(x.to_day, d.to_day)) - GREATEST(d.from_day, x.from_day), 0) AS DOUBLE PRECISION)
        / NULLIF(CAST(d.to_day - d.from_day AS DOUBLE PRECISION), 0)
      WHEN x.from_day <= d.to_day AND (x.to_day IS NULL OR x.to_day > d.to_day) THEN 1E0 ELSE 0E0 END)) AS per_kg,
    SUM(x.per_month * CAST(GREATEST(LEAST(d.to_day, COALESCE(x.to_day, d.to_day)) - GREATEST(d.from_day, x.from_day), 0) AS DOUBLE PRECISION)
      / ${MONTH_DAYS}) AS over_time
  FROM ${name}_days AS d JOIN expected_change AS x ON x.program = d.program AND x.measure = '${measure}'
  GROUP BY d.enrolment_no, d.from_date, d.to_date
)`;
