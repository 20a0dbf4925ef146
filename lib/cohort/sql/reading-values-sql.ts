import { compileExpression } from '../../measures/compile-sql';
import type { ComparabilityRule } from '../../measures/comparability-rule';
import { guardBit, type GuardCode } from '../../measures/guard';
import type { CohortModel } from '../model';
import { completedYears } from './clients-sql';
import { gradientColumn } from './gradient-column';
import { brokenByReading, labelColumns, recordableMask, recordedByReading } from './rule-masks-sql';

const MONTH = 'CAST(EXTRACT(YEAR FROM visit_date) * 12 + EXTRACT(MONTH FROM visit_date) AS INTEGER)';

const guard = (when: string, code: GuardCode): string =>
  `(CASE WHEN ${when} THEN ${String(guardBit(code))} ELSE 0 END)`;

const GUARDS = [
  guard("oedema = 1 OR fluid_condition IN ('ascites', 'heart_failure', 'cirrhosis', 'infusion')", 'fluid'),
  guard("dialysis IN ('haemo', 'peritoneal')", 'dialysis'),
  guard('pregnant = 1 OR weeks_after_birth < 12', 'pregnancy'),
  guard('amputation_or_limb_loss = 1 OR large_metal_implant = 1 OR one_sided_condition = 1', 'body_geometry'),
  guard('completed_age < 18 OR (born_in IS NOT NULL AND EXTRACT(YEAR FROM visit_date) - born_in <= 18)', 'under_18'),
].join(' | ');

const carried = (rules: readonly ComparabilityRule[]): string =>
  [...new Set([...labelColumns(rules), 'electrode_path', 'posture', 'frequency_khz'])]
    .filter((column) => column !== 'device_id')
    .join(', ');

/**
 * On which device's scale a table of values stands: everybody's own, or those of one target of the accepted conversions,
 * for the clients who were measured on a device that converts to it.
 */
export type Scale = { readonly table: string; readonly target?: number };

/** SQL of a reading's device, named by its era where a step cuts it. */
const DEVICE = 'COALESCE(era.label, r.device_id)';

const shifted = (column: string, shift: string, { target }: Scale): string =>
  target === undefined ? `r.${column}` : `r.${column} + COALESCE(h.${shift}, 0E0) AS ${column}`;

const fromReadings = ({ target }: Scale): string => `FROM readings AS r
  JOIN clients AS c ON c.client_key = r.client_key
  LEFT JOIN device_eras AS era ON era.device = r.device_id AND (era.from_date IS NULL OR era.from_date <= r.visit_date)
    AND (era.to_date IS NULL OR era.to_date > r.visit_date)
  ${target === undefined ? '' : `LEFT JOIN device_shifts AS h ON h.target_no = ${String(target)} AND h.device = ${DEVICE}`}
  CROSS JOIN params AS p
  WHERE r.visit_date <= p.as_of
  ${
    target === undefined
      ? ''
      : `AND r.client_key IN (SELECT own.client_key FROM visits AS own
    JOIN device_shifts AS there ON there.target_no = ${String(target)} AND there.device = own.device)`
  }`;

/** Texts for `site_days` (what a declared procedure stands for) and `recorded_here` (which conditions a site records in a month). */
export const siteStatements = ({ rules }: CohortModel): readonly string[] => [
  `CREATE OR REPLACE TABLE site_days AS
WITH days AS (SELECT DISTINCT COALESCE(site, '') AS site, visit_date FROM readings)
SELECT d.site, d.visit_date, COALESCE(BIT_OR(p.mask), 0) AS procedure_mask
FROM days AS d
LEFT JOIN procedures AS p ON (p.site IS NULL OR p.site = d.site)
  AND (p.from_date IS NULL OR p.from_date <= d.visit_date) AND (p.to_date IS NULL OR p.to_date >= d.visit_date)
GROUP BY d.site, d.visit_date`,
  `CREATE OR REPLACE TABLE recorded_here AS
SELECT COALESCE(site, '') AS site, ${MONTH} AS calendar_month, BIT_OR(${recordedByReading(rules)}) AS recorded_mask
FROM readings GROUP BY COALESCE(site, ''), ${MONTH}`,
];

/**
 * Text for a table of every value of every reading beside its masks, on one scale. Broken: the reading broke a rule.
 * Unknown: recorded here, empty in this reading, no procedure. By procedure: empty, but declared.
 */
export const readingValuesStatement = ({ rules, catalogue, publishedGradients }: CohortModel, scale: Scale): string => {
  const recordable = String(recordableMask(rules));
  const values = [
    ...catalogue.all.map((measure) => `${compileExpression(measure.formula)} AS ${measure.id}`),
    ...[...publishedGradients].map(([id, gradient]) => `${compileExpression(gradient)} AS ${gradientColumn(id)}`),
  ].join(',\n  ');
  return `CREATE OR REPLACE TABLE ${scale.table} AS
WITH known AS (
  SELECT r.reading_key, r.client_key, r.visit_date, r.visit_purpose, COALESCE(r.site, '') AS site, r.reading,
    COALESCE(${DEVICE}, '') AS device, ${DEVICE} AS device_id, c.sex, ${carried(rules)},
    ${shifted('weight_kg', 'weight', scale)}, r.height_cm AS recorded_height_cm, ${shifted('r_ohm', 'r', scale)}, ${shifted('xc_ohm', 'xc', scale)}, r.waist_cm, r.arm_cm, r.calf_cm,
    r.ffm_kg, r.fm_kg, r.smm_kg, r.tbw_l, r.ecw_l, r.phase_angle_deg,
    r.oedema, r.fluid_condition, r.dialysis, r.hours_since_dialysis, r.pregnant, r.weeks_after_birth,
    r.amputation_or_limb_loss, r.large_metal_implant, r.one_sided_condition,
    r.fasted_h, r.since_exercise_h, r.since_alcohol_h, r.large_drink, r.bladder_emptied, r.rested, r.contact_ok,
    r.acute_illness, r.medication_changed,
    COALESCE(${completedYears('c.birth_ref', 'r.visit_date')}, CAST(FLOOR(r.age_years) AS INTEGER)) AS completed_age,
    COALESCE(CAST(r.visit_date - c.birth_ref AS DOUBLE PRECISION) / 365.25E0, r.age_years) AS age_years,
    c.series_height_cm, c.born_in,
    CASE WHEN r.amputation_or_limb_loss = 0 AND r.large_metal_implant = 0 AND r.one_sided_condition = 0
      THEN 1 ELSE 0 END AS whole_body_denied,
    CAST(CASE c.sex WHEN 'M' THEN 1 WHEN 'F' THEN 0 END AS DOUBLE PRECISION) AS sex_male
  ${fromReadings(scale)}
),
inputs AS (
  SELECT known.*, CASE WHEN completed_age < 18 THEN recorded_height_cm ELSE series_height_cm END AS height_cm,
    ${brokenByReading(rules)} AS broken, ${recordedByReading(rules)} AS recorded, ${GUARDS} AS guards
  FROM known
),
judged AS (
  SELECT i.*, h.recorded_mask, s.procedure_mask,
    ${recordable} & ~i.recorded & s.procedure_mask AS by_procedure,
    ${recordable} & ~i.recorded & ~s.procedure_mask & h.recorded_mask AS unknown,
    ${recordable} & ~i.recorded & ~s.procedure_mask & ~h.recorded_mask AS not_recorded
  FROM inputs AS i
  JOIN recorded_here AS h ON h.site = i.site AND h.calendar_month = ${MONTH.replaceAll('visit_date', 'i.visit_date')}
  JOIN site_days AS s ON s.site = i.site AND s.visit_date = i.visit_date
)
SELECT judged.*,
  ${values}
FROM judged`;
};
