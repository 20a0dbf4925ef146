import { purposeNumber } from '../purpose-number';
import { doubleLiteral } from '../../measures/compile-sql';
import { guardBit, guardMask } from '../../measures/guard';
import type { Measure } from '../../measures/measure';
import type { AnyMeasureId } from '../../measures/measure-id';
import type { CohortModel } from '../model';
import { isExported } from '../is-exported';
import { changeTerms, TERM_PARTS } from './change-terms-sql';
import { outsideConditions } from './outside-equation-sql';
import { joinLater } from './converted-sql';
import { WITH_DEVICE } from './pairs-sql';
import { gradientColumn } from './gradient-column';
import { reciprocal } from './reciprocal';

const when = (condition: string, bit: number | string): string =>
  `(CASE WHEN ${condition} THEN ${String(bit)} ELSE 0 END)`;

const eitherOutside = (column: string, [low, high]: readonly [number, number]): string =>
  `(a.${column} < ${doubleLiteral(low)} OR a.${column} > ${doubleLiteral(high)} OR b.${column} < ${doubleLiteral(low)} OR b.${column} > ${doubleLiteral(high)})`;

/** Guards that need both visits or the value's equation. */
export const ownGuards = (measure: Measure): string => {
  const { equation } = measure;
  const parts = [
    when(eitherOutside('bmi', [16, 34]), guardBit('bmi_outside_16_34')),
    when(
      'a.bmi IS NULL OR b.bmi IS NULL',
      `(CASE WHEN EXISTS (SELECT 1 FROM visits AS known WHERE known.bmi IS NOT NULL) THEN ${String(guardBit('bmi_unknown'))} ELSE ${String(guardBit('bmi_not_recorded'))} END)`,
    ),
    when(
      'p.days > 0 AND (a.weight - b.weight) * 7E0 / NULLIF(p.days, 0) >= 0.01E0 * a.weight',
      guardBit('fast_weight_loss'),
    ),
  ];
  if (equation !== undefined) {
    const later = outsideConditions(equation, 'b');
    outsideConditions(equation, 'a').forEach(({ code, when: first }, place) => {
      parts.push(when(`${first} OR ${later[place]?.when ?? 'FALSE'}`, guardBit(code)));
    });
  }
  return parts.join(' | ');
};

/** SQL of the direction (1 up, −1 down, 0 within, NULL without a threshold): beyond is d ≠ 0 and |d| ≥ LSC − 1e-9·max(|x₁|, |x₂|, LSC). */
export const beyond = (from: string, to: string, lsc: string): string =>
  `CASE WHEN ${lsc} IS NULL OR ${from} IS NULL OR ${to} IS NULL THEN NULL
    WHEN ${to} - ${from} <> 0 AND ABS(${to} - ${from}) >= ${lsc} - 1E-9 * GREATEST(ABS(${from}), ABS(${to}), ${lsc})
    THEN CASE WHEN ${to} > ${from} THEN 1 ELSE -1 END ELSE 0 END`;

/** From this tier on there is no result: own repositioning alone, or nothing. */
const LOWER_LIMIT_TIER = 5;

/** A published error of the impedance holds at both visits' own values, and never gives less than own repositioning (`least`). */
const betweenOf = (t: string, id: AnyMeasureId, { publishedGradients }: CohortModel): string => {
  if (!publishedGradients.has(id)) return `${t}.two_between`;
  const [from, to] = [`a.${gradientColumn(id)}`, `b.${gradientColumn(id)}`];
  return `(CASE WHEN ${t}.at_own_values = 1 AND ${from} IS NOT NULL AND ${to} IS NOT NULL
    THEN GREATEST(${t}.least, ${t}.two_between / 2E0 * (${from} * ${from} + ${to} * ${to}))
    WHEN ${t}.at_own_values = 0 THEN ${t}.two_between END)`;
};

/** What the conversion of the later value adds to the variance of a change. */
const conversionOf = (id: string, { conversionTargets }: CohortModel): string =>
  conversionTargets === 0
    ? ''
    : ` + COALESCE((SELECT MAX(x.variance) FROM conversion_errors AS x
    WHERE x.measure = '${id}' AND x.target_no = p.target_no AND x.device = b.device), 0E0)`;

const rootOfVariance = (threshold: string, basis: string, id: AnyMeasureId, model: CohortModel): string =>
  `${threshold}.factor * SQRT(${betweenOf(threshold, id, model)} + ${threshold}.within_variance * (${reciprocal(`a.${basis}`)} + ${reciprocal(`b.${basis}`)})${conversionOf(id, model)})`;

/**
 * The threshold of a value's change in its own unit. In the log form L = f·√V is a threshold of ln(x₂/x₁), which is
 * x₁·(e^L − 1) upwards and x₁·(1 − e^−L) downwards: the one in the direction of the change, so that the comparison is the
 * same as that of the logarithms. Without one where a value is not above zero, or is converted: what a conversion adds
 * is known in the value's unit alone.
 */
const lscOf = (threshold: string, basis: string, id: AnyMeasureId, model: CohortModel): string => {
  const root = rootOfVariance(threshold, basis, id, model);
  return `(CASE WHEN ${threshold}.is_log = 1 THEN CASE WHEN a.${id} > 0 AND b.${id} > 0 AND p.target_no < 0 THEN a.${id} * (CASE WHEN b.${id} >= a.${id}
    THEN EXP(${root}) - 1E0 ELSE 1E0 - EXP(-(${root})) END) END ELSE ${root} END)`;
};

/** The group that both visits of a pair lie in and that has a threshold of its own; '' for everyone's. */
const PAIR_GROUP = "CASE WHEN ga.group_name = gb.group_name THEN ga.group_name ELSE '' END";

const isGrouped = ({ study }: CohortModel): boolean => study.errorFrom !== 'everyone';

const joinGroups = (model: CohortModel): string =>
  isGrouped(model)
    ? `LEFT JOIN threshold_groups AS ga ON ga.client_key = p.client_key AND ga.visit_no = p.from_no
  LEFT JOIN threshold_groups AS gb ON gb.client_key = p.client_key AND gb.visit_no = p.to_no`
    : '';

const joinThreshold = (name: string, measure: string, model: CohortModel): string =>
  `LEFT JOIN thresholds AS ${name} ON ${name}.measure = '${measure}' AND ${name}.level = f.level AND ${name}.group_name = ${isGrouped(model) ? PAIR_GROUP : "''"}`;

/** A threshold that may explain another value's change: repositioning alone is a lower limit and gives no direction. */
const joinExplaining = (name: string, measure: string, model: CohortModel): string =>
  `${joinThreshold(name, measure, model)} AND ${name}.tier < ${String(LOWER_LIMIT_TIER)}`;

/** Values whose fall may be water: computed from R, so that they move with it. */
const LEAN = new Set(['ffm', 'ffmi', 'smm', 'smi']);
/** Values with the equation's weight term inside. */
const WEIGHT_TERM = new Set(['ffm', 'ffmi']);

const patterns = (measure: Measure): string => {
  const parts = ['0'];
  if (WEIGHT_TERM.has(measure.id))
    parts.push(when('direction <> 0 AND without_weight_direction = 0', guardBit('mostly_weight_term')));
  if (LEAN.has(measure.id)) {
    parts.push(
      when('direction = -1 AND impedance_direction = 1 AND phase_direction = 0', guardBit('fits_less_water')),
      when('direction = -1 AND phase_direction = -1', guardBit('fits_cell_mass')),
    );
  }
  return parts.join(' | ');
};

/**
 * The CTE text `change_rows` for one value: every pair that holds it, under the one-row table `filter`, with change,
 * threshold for its numbers of readings and whose error it rests on (`error_group`, '' for everyone; `own_error`), guards (kind 0 none, 1 note, 2 hold, 3 stop) and result code
 * (1 up, −1 down, 0 within, 2 no threshold, 3 cannot be compared, NULL stopped or held).
 */
export const changeRows = (measure: Measure, model: CohortModel): string => {
  const basis = model.bases.of(measure);
  const guards = model.guards(measure);
  const terms = changeTerms(measure);
  const rank = isExported(measure) ? 'p.pair_rank_exported' : 'p.pair_rank';
  const termColumns = TERM_PARTS.map((part) => `${terms?.[part] ?? 'CAST(NULL AS DOUBLE PRECISION)'} AS term_${part}`);
  return `joined AS (
  SELECT p.purpose, p.review_week, p.client_key, p.enrolment_no, p.program, p.from_no, p.to_no, p.target_no, ${isExported(measure) ? `${WITH_DEVICE.replaceAll(/\b(broken|target_no)\b/g, 'p.$1')} AS broken` : 'p.broken'}, p.unknown, p.by_procedure,
    p.days, ${rank} AS pair_rank, f.rank_limit, a.visit_date AS from_date, b.visit_date AS to_date,
    a.${basis.column} AS k_from, b.${basis.column} AS k_to, a.${measure.id} AS value_from, b.${measure.id} AS value_to,
    t.tier, t.factor, t.group_name AS error_group, t.own AS own_error, ${lscOf('t', basis.column, measure.id, model)} AS lsc, p.guards | ${ownGuards(measure)} AS pair_guards,
    ${termColumns.join(', ')},
    ${beyond('a.ffm_without_weight', 'b.ffm_without_weight', lscOf('tw', basis.column, 'ffm_without_weight', model))} AS without_weight_direction,
    ${beyond('a.z_h', 'b.z_h', lscOf('tz', basis.column, 'z_h', model))} AS impedance_direction,
    ${beyond('a.phase_angle', 'b.phase_angle', lscOf('tp', basis.column, 'phase_angle', model))} AS phase_direction
  FROM pairs AS p
  CROSS JOIN filter AS f
  JOIN visits AS a ON a.client_key = p.client_key AND a.visit_no = p.from_no
  ${joinLater(model, 'p', 'p.target_no')}
  ${joinGroups(model)}
  ${joinThreshold('t', measure.id, model)}
  ${joinExplaining('tw', 'ffm_without_weight', model)}
  ${joinExplaining('tz', 'z_h', model)}
  ${joinExplaining('tp', 'phase_angle', model)}
  WHERE p.purpose = f.purpose AND (f.review_week IS NULL OR f.purpose < ${String(purposeNumber('baseline-review'))} OR p.review_week = f.review_week) AND p.bases & ${String(1 << basis.index)} <> 0
    AND (f.program IS NULL OR p.program = f.program) AND (f.site IS NULL OR p.site = f.site)
    AND (f.sex IS NULL OR p.sex = f.sex) AND (f.age_from IS NULL OR p.completed_age >= f.age_from)
    AND (f.age_to IS NULL OR p.completed_age <= f.age_to) AND (f.client_key IS NULL OR p.client_key = f.client_key)
),
directed AS (
  SELECT joined.*, value_to - value_from AS change,
    CASE WHEN tier < ${String(LOWER_LIMIT_TIER)} THEN ${beyond('value_from', 'value_to', 'lsc')} END AS direction
  FROM joined
),
explained AS (SELECT directed.*, pair_guards | ${patterns(measure)} AS all_guards FROM directed),
guarded AS (
  SELECT explained.*, CASE WHEN all_guards & ${String(guardMask(guards.stop))} <> 0 THEN 3
    WHEN all_guards & ${String(guardMask(guards.hold))} <> 0 THEN 2
    WHEN all_guards & ${String(guardMask(guards.note))} <> 0 THEN 1 ELSE 0 END AS guard_kind,
    all_guards & ${String(guardMask([...guards.stop, ...guards.hold, ...guards.note]))} AS guard_mask
  FROM explained
),
change_rows AS (
  SELECT guarded.*, CASE WHEN pair_rank <= rank_limit THEN 1 ELSE 0 END AS admitted,
    CASE WHEN guard_kind >= 2 THEN NULL WHEN pair_rank > rank_limit THEN 3
      WHEN direction IS NULL THEN 2 ELSE direction END AS result_code
  FROM guarded
)`;
};
