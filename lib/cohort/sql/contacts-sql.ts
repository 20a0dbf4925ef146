import { CHANGE_COLUMNS } from '../change-row-from';
import { guardMask } from '../../measures/guard';
import type { AnyMeasureId } from '../../measures/measure-id';
import { isExported } from '../is-exported';
import type { CohortModel } from '../model';
import { changeRows } from './change-sql';
import { expectedRows } from './expected-change-sql';
import { joinLater } from './converted-sql';
import { outsidePath } from './outside-equation-sql';

/** A client stands on a list for six weeks after the last visit. */
const RECENT_DAYS = 42;
/** A second sight within two weeks confirms the first. */
const CONFIRM_DAYS = 14;

/** The visit `v` before the latest, `w`, as it is compared with the baseline of `r`: converted where the two devices differ. */
const joinBefore = (model: CohortModel): string =>
  model.conversionTargets === 0 || isExported(model.catalogue.measure(model.lean))
    ? 'LEFT JOIN visits AS v ON v.client_key = w.client_key AND v.visit_no = w.before_no'
    : `LEFT JOIN visits AS z ON z.client_key = r.client_key AND z.visit_no = r.from_no
LEFT JOIN visits AS u ON u.client_key = w.client_key AND u.visit_no = w.before_no
LEFT JOIN device_targets AS zt ON zt.device = z.device
LEFT JOIN device_shifts AS zh ON zh.target_no = zt.target_no AND zh.device = u.device
LEFT JOIN baseline_grades AS zg ON zg.enrolment_no = r.enrolment_no AND zg.visit_no = w.before_no
LEFT JOIN (SELECT -1 AS target_no, own.* FROM visits AS own UNION ALL SELECT moved.* FROM visits_converted AS moved) AS v
  ON v.client_key = w.client_key AND v.visit_no = w.before_no AND v.target_no = COALESCE(zh.target_no, -1)`;

/** Whether the visit before is on the baseline's scale, or may be compared with it on its own. */
const onOneScale = (model: CohortModel): string =>
  model.conversionTargets === 0 || isExported(model.catalogue.measure(model.lean))
    ? ''
    : ' AND (v.target_no >= 0 OR v.device = z.device OR zg.grade_rank <= r.rank_limit)';

const conversionError = (model: CohortModel, id: AnyMeasureId, later: { target: string; device: string }): string =>
  model.conversionTargets === 0
    ? '0E0'
    : `COALESCE((SELECT MAX(x.variance) FROM conversion_errors AS x
    WHERE x.measure = '${id}' AND x.target_no = ${later.target} AND x.device = ${later.device}), 0E0)`;

/** Which groups the baseline and the visit before lie in, where groups have errors of their own. */
const beforeGroup = (model: CohortModel): { readonly column: string; readonly join: string } =>
  model.study.errorFrom === 'everyone'
    ? { column: "''", join: '' }
    : {
        column: "CASE WHEN gz.group_name = gv.group_name THEN gz.group_name ELSE '' END",
        join: `LEFT JOIN threshold_groups AS gz ON gz.client_key = r.client_key AND gz.visit_no = r.from_no
LEFT JOIN threshold_groups AS gv ON gv.client_key = w.client_key AND gv.visit_no = w.before_no`,
      };

/**
 * Every active enrolment of a client seen within six weeks, with the baseline→latest change of the lean value, what
 * explains it, who is at fault where a rule is broken, and the visit before within two weeks; a client's enrolment that
 * began last first.
 */
export const contactCandidatesQuery = (model: CohortModel): string => {
  const { lean } = model;
  const measure = model.catalogue.measure(lean);
  const basis = model.bases.of(measure);
  const k = basis.column;
  const rank = isExported(measure) ? 'c.pair_rank_exported' : 'c.pair_rank';
  const converted = model.conversionTargets > 0 && !isExported(measure);
  const latest = { target: 'r.target_no', device: 'r.device_to' };
  const group = beforeGroup(model);
  const stopped = String(guardMask(model.guards(measure).stop));
  return `WITH ${changeRows(measure, model)},
recent AS (
  SELECT r.*, e.program_start, a.weight AS weight_from, b.weight AS weight_to,
    a.ffm_without_weight AS bare_from, b.ffm_without_weight AS bare_to, a.phase_angle AS phase_from,
    b.phase_angle AS phase_to, b.device AS device_to, a.broken AS broken_from, b.broken AS broken_to,
    a.unknown AS unknown_from, b.unknown AS unknown_to
  FROM change_rows AS r
  JOIN enrolments AS e ON e.enrolment_no = r.enrolment_no AND e.active = 1
  JOIN visits AS a ON a.client_key = r.client_key AND a.visit_no = r.from_no
  ${joinLater(model, 'r', 'r.target_no')}
  CROSS JOIN params AS p
  WHERE r.to_date >= p.as_of - ${String(RECENT_DAYS)}
),
before AS (
  SELECT q.enrolment_no, q.client_key, MAX(v.visit_no) AS before_no
  FROM recent AS q JOIN visits AS v ON v.client_key = q.client_key AND v.in_series = 1
    AND v.visit_no < q.to_no AND v.visit_no > q.from_no AND v.${k} > 0
  GROUP BY q.enrolment_no, q.client_key
),
before_pairs AS (
  SELECT q.enrolment_no, q.from_date, v.visit_date AS to_date
  FROM recent AS q
  JOIN before AS w ON w.enrolment_no = q.enrolment_no
  JOIN visits AS v ON v.client_key = w.client_key AND v.visit_no = w.before_no
),
${expectedRows('expected', 'recent', lean)},
${expectedRows('expected_before', 'before_pairs', lean)},
other AS (
  SELECT c.client_key, c.to_no, c.from_no, CASE WHEN c.guards & ${stopped} <> 0
    OR ${outsidePath(measure, 'a')} OR ${outsidePath(measure, 'b')} THEN 3 ELSE ${rank} END AS pair_rank
  FROM pairs AS c
  JOIN visits AS a ON a.client_key = c.client_key AND a.visit_no = c.from_no
  JOIN visits AS b ON b.client_key = c.client_key AND b.visit_no = c.to_no
  WHERE c.purpose = 0 AND c.bases & ${String(1 << basis.index)} <> 0
)
SELECT ${CHANGE_COLUMNS}, r.enrolment_no, r.program_start, r.weight_to - r.weight_from AS weight_change,
  r.bare_to - r.bare_from AS bare_change, r.phase_to - r.phase_from AS phase_change,
  r.without_weight_direction, r.impedance_direction, r.phase_direction, r.broken_from, r.broken_to,
  r.unknown_from, r.unknown_to, r.rank_limit,
  COALESCE(x.per_kg, 0E0) AS per_kg, COALESCE(x.over_time, 0E0) AS over_time,
  COALESCE(xb.per_kg, 0E0) AS before_per_kg, COALESCE(xb.over_time, 0E0) AS before_over_time, o.pair_rank AS step_rank, o.from_no AS step_from_no, v.visit_date AS before_date, v.${lean} AS before_value,
  v.weight - r.weight_from AS before_weight_change, v.${k} AS before_k,
  CASE WHEN v.visit_date >= r.to_date - ${String(CONFIRM_DAYS)}${onOneScale(model)} THEN 1 ELSE 0 END AS before_confirms,
  ${group.column} AS before_group, ${converted ? 'v.target_no' : '-1'} AS before_target,
  ${converted ? conversionError(model, lean, { target: 'v.target_no', device: 'v.device' }) : '0E0'} AS before_conversion,
  ${conversionError(model, 'ffm_without_weight', latest)} AS bare_conversion, ${conversionError(model, 'phase_angle', latest)} AS phase_conversion
FROM recent AS r
JOIN clients AS c ON c.client_key = r.client_key
LEFT JOIN expected AS x ON x.enrolment_no = r.enrolment_no AND x.from_date = r.from_date AND x.to_date = r.to_date
LEFT JOIN before AS w ON w.enrolment_no = r.enrolment_no
${joinBefore(model)}
${group.join}
LEFT JOIN expected_before AS xb ON xb.enrolment_no = r.enrolment_no AND xb.from_date = r.from_date AND xb.to_date = v.visit_date
LEFT JOIN other AS o ON o.client_key = r.client_key AND o.to_no = r.to_no
ORDER BY c.client_id, r.program_start DESC NULLS LAST, r.enrolment_no`;
};

/** The lean value at every series visit of the enrolments in question, graded against the enrolment's baseline. */
export const stripQuery = ({
  lean,
  catalogue,
  guards,
}: CohortModel): string => `SELECT e.enrolment_no, v.visit_date, v.${lean} AS value, MIN(g.grade_rank) AS grade_rank
FROM visits AS v
JOIN enrolments AS e ON e.client_key = v.client_key AND e.active = 1
JOIN baseline_grades AS g ON g.enrolment_no = e.enrolment_no AND g.visit_no = v.visit_no
CROSS JOIN params AS p
WHERE v.in_series = 1 AND v.${lean} IS NOT NULL AND v.visit_no >= e.baseline_no
  AND v.guards & ${String(guardMask(guards(catalogue.measure(lean)).stop))} = 0
  AND NOT (${outsidePath(catalogue.measure(lean), 'v')})
  AND EXISTS (SELECT 1 FROM visits AS l WHERE l.client_key = v.client_key AND l.in_series = 1 AND l.visit_date >= p.as_of - ${String(RECENT_DAYS)})
GROUP BY e.enrolment_no, v.visit_date, v.visit_no, v.${lean}
ORDER BY e.enrolment_no, v.visit_date, v.visit_no`;
