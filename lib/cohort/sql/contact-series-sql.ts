import { guardBit, guardMask, type Guards } from '../../measures/guard';
import type { Measure } from '../../measures/measure';
import type { CohortModel } from '../model';
import { masksFor } from '../rules-in-force';
import { ownGuards } from './change-sql';
import { expectedRows } from './expected-change-sql';
import { rankExpression } from './pairs-sql';
import { brokenByPair } from './rule-masks-sql';

/** A client stands on a list for six weeks after the last visit. */
const RECENT_DAYS = 42;

const blocking = ({ stop, hold }: Guards): string => String(guardMask([...stop, ...hold]));

/** A level that nobody may read: no cut-off for an equation made lying where people stand. */
const level = (id: 'ffmi' | 'asmi', { catalogue, guards }: CohortModel): string => {
  if (!catalogue.follows(id)) return `CAST(NULL AS DOUBLE PRECISION) AS ${id}`;
  const measure = catalogue.measure(id);
  const { stop, hold } = guards(measure);
  const mask = String(guardMask([...stop, ...hold, 'lying_equation_standing']));
  return `CASE WHEN (p.pair_guards | ${ownGuards(measure)}) & ${mask} = 0 THEN a.${id} END AS ${id}`;
};

/**
 * Every visit from baseline to the latest of every open enrolment of the clients seen within six weeks, with one value and its
 * grade against the latest visit that holds it, under the one-row table `filter`.
 */
export const contactSeriesQuery = (measure: Measure, model: CohortModel): string => {
  const { bases, masks, rules } = model;
  const basis = bases.of(measure);
  const latest = `latest_${String(basis.index)}`;
  return `WITH open_now AS (
  SELECT l.enrolment_no, l.client_key, l.program, e.program_start, e.weight_change_intended, l.baseline_no, l.${latest} AS to_no
  FROM enrolment_latest AS l
  JOIN enrolments AS e ON e.enrolment_no = l.enrolment_no AND e.active = 1
  JOIN visits AS v ON v.client_key = l.client_key AND v.visit_no = l.${latest}
  CROSS JOIN params AS s
  CROSS JOIN filter AS f
  WHERE v.visit_date >= s.as_of - ${String(RECENT_DAYS)} AND l.baseline_no IS NOT NULL
    AND (f.program IS NULL OR l.program = f.program) AND (f.site IS NULL OR v.site = f.site)
    AND (f.sex IS NULL OR v.sex = f.sex) AND (f.age_from IS NULL OR v.completed_age >= f.age_from)
    AND (f.age_to IS NULL OR v.completed_age <= f.age_to)
),
paired AS (
  SELECT o.enrolment_no, o.client_key, o.program, o.program_start, o.weight_change_intended,
    o.baseline_no, o.to_no, a.visit_no AS from_no,
    b.visit_date - a.visit_date AS days, a.broken | b.broken | ${brokenByPair(rules)} AS broken,
    a.unknown | b.unknown AS unknown, a.by_procedure | b.by_procedure AS by_procedure,
    a.guards | b.guards | (CASE WHEN b.pregnancies_so_far > a.pregnancies_so_far
      OR CAST(b.visit_date - a.visit_date AS DOUBLE PRECISION) > 7E0 * b.weeks_after_birth - 84E0
      THEN ${String(guardBit('pregnancy'))} ELSE 0 END) AS pair_guards
  FROM open_now AS o
  JOIN visits AS b ON b.client_key = o.client_key AND b.visit_no = o.to_no
  JOIN visits AS a ON a.client_key = o.client_key AND a.in_series = 1
    AND a.visit_no BETWEEN o.baseline_no AND o.to_no AND a.${basis.column} > 0
),
spans AS (
  SELECT DISTINCT p.enrolment_no, z.visit_date AS from_date, a.visit_date AS to_date
  FROM paired AS p
  JOIN visits AS a ON a.client_key = p.client_key AND a.visit_no = p.from_no
  JOIN visits AS z ON z.client_key = p.client_key AND z.visit_no = p.baseline_no
),
${expectedRows('expected', 'spans', measure.id)}
SELECT p.enrolment_no, p.client_key, c.client_id, p.program, p.program_start, a.visit_date, a.${basis.column} AS k, a.${measure.id} AS value,
  a.weight, a.ffm_without_weight AS without_weight, a.weight - z.weight AS weight_change, 
  COALESCE(x.per_kg, 0E0) AS per_kg, COALESCE(x.over_time, 0E0) AS over_time,
  ${level('ffmi', model)}, ${level('asmi', model)}, ${model.study.errorFrom === 'everyone' ? 'CAST(NULL AS TEXT)' : 'g.group_name'} AS group_name,
  CASE WHEN ${rankExpression('p.broken', 'p.unknown', 'p.by_procedure', masksFor(masks, measure))} <= f.rank_limit
    AND (p.pair_guards | ${ownGuards(measure)}) & ${blocking(model.guards(measure))} = 0 THEN 1 ELSE 0 END AS usable,
  b.sex, b.completed_age AS age_years, b.bmi, p.weight_change_intended AS intended
FROM paired AS p
JOIN clients AS c ON c.client_key = p.client_key
JOIN visits AS a ON a.client_key = p.client_key AND a.visit_no = p.from_no
JOIN visits AS b ON b.client_key = p.client_key AND b.visit_no = p.to_no
JOIN visits AS z ON z.client_key = p.client_key AND z.visit_no = p.baseline_no
CROSS JOIN filter AS f
${model.study.errorFrom === 'everyone' ? '' : 'LEFT JOIN threshold_groups AS g ON g.client_key = p.client_key AND g.visit_no = p.from_no'}
LEFT JOIN expected AS x ON x.enrolment_no = p.enrolment_no AND x.from_date = z.visit_date AND x.to_date = a.visit_date
ORDER BY c.client_id, p.program_start DESC NULLS LAST, p.enrolment_no, a.visit_date, a.visit_no`;
};
