import type { Equation, Regressor } from '../../measures/equation';
import { guardBit } from '../../measures/guard';
import { regressorsOf } from '../../measures/linear-parts';
import type { Measure, MeasureParts } from '../../measures/measure';
import type { CohortModel } from '../model';
import { gradientColumn } from './gradient-column';
import { labelColumns, labelsInDisagreement } from './rule-masks-sql';

const REGRESSOR_COLUMN: Readonly<Partial<Record<Regressor, string>>> = {
  height2_per_resistance: '1E0 / NULLIF(r.r_ohm, 0)',
  resistance: 'r.r_ohm',
  weight: 'r.weight_kg',
  reactance: 'r.xc_ohm',
  age: 'r.age_years',
};

/** Values that are a regression themselves and split: their terms' means are kept, so that a change splits exactly. */
const isRegression = (
  measure: Measure,
): measure is Measure & { readonly equation: Equation; readonly parts: MeasureParts } =>
  measure.equation !== undefined && measure.parts !== undefined && !measure.parts.perHeightSquared;

/**
 * The column of `visits` with the mean of a regressor over the readings that hold the value: the equation's own, or fat
 * mass, which holds the weight beside it.
 */
export const regressorMean = (equation: Equation, parts: MeasureParts, regressor: Regressor): string =>
  `${parts.weightCoefficient === 1 ? 'fm' : equation.quantity}_mean_${regressor}`;

const regressorMeans = (measures: readonly Measure[]): string =>
  measures
    .filter(isRegression)
    .flatMap(({ id, equation, parts }) =>
      [...new Set<Regressor>([...regressorsOf(equation), 'weight'])].flatMap((regressor) => {
        const column = REGRESSOR_COLUMN[regressor];
        return column === undefined
          ? []
          : [`AVG(CASE WHEN r.${id} IS NOT NULL THEN ${column} END) AS ${regressorMean(equation, parts, regressor)},`];
      }),
    )
    .join('\n  ');

const label = (column: string): string =>
  `CASE WHEN COUNT(r.${column}) = COUNT(*) AND MIN(r.${column}) = MAX(r.${column}) THEN MIN(r.${column}) END AS ${column}`;

/**
 * One row per client, date, purpose, device and frequency: the mean of each value over its readings, how many readings hold each
 * basis, masks over the readings, and a number in time order. A body that differs from what an equation assumes stays so
 * at later visits that leave the columns empty. `first_path`, `last_path`, `any_standing`, `any_lying`: what a label no longer says where
 * the readings disagree, so that one reading on another path is enough for a guard. `in_series`: a visit that pairs are made from; of
 * several frequencies on a day the one at 50 kHz.
 */
export const visitsStatements = (
  { rules, catalogue, bases, publishedGradients }: CohortModel,
  tables: { readonly from: string; readonly to: string },
): readonly string[] => {
  const labels = [...new Set([...labelColumns(rules), 'electrode_path', 'posture', 'frequency_khz'])];
  const pregnancy = String(guardBit('pregnancy'));
  const geometry = String(guardBit('body_geometry'));
  return [
    `CREATE OR REPLACE TABLE visit_means AS
SELECT r.client_key, r.visit_date, r.visit_purpose, r.device, MIN(r.reading_key) AS first_reading_key,
  CAST(COUNT(*) AS INTEGER) AS readings, MIN(r.site) AS site, MIN(r.sex) AS sex,
  ${labels.map(label).join(',\n  ')},
  MIN(r.electrode_path) AS first_path, MAX(r.electrode_path) AS last_path,
  MAX(CASE WHEN r.posture = 'standing' THEN 1 ELSE 0 END) AS any_standing,
  MAX(CASE WHEN r.posture = 'lying' THEN 1 ELSE 0 END) AS any_lying,
  MIN(r.completed_age) AS completed_age, AVG(r.height_cm) AS height_cm, AVG(r.recorded_height_cm) AS recorded_height_cm,
  MAX(CASE WHEN r.dialysis IN ('haemo', 'peritoneal') THEN 1 ELSE 0 END) AS on_dialysis,
  AVG(r.hours_since_dialysis) AS hours_since_dialysis, MAX(COALESCE(r.medication_changed, 0)) AS medication_changed_here,
  BIT_OR(r.broken) AS broken, BIT_OR(r.unknown) | ${labelsInDisagreement(rules)} AS unknown,
  BIT_OR(r.by_procedure) AS by_procedure, BIT_OR(r.not_recorded) AS not_recorded, BIT_OR(r.guards) AS reading_guards,
  MIN(r.weeks_after_birth) AS weeks_after_birth, MAX(r.whole_body_denied) AS whole_body_denied,
  ${bases.list.map((basis) => `CAST(COUNT(r.${basis.witness}) AS INTEGER) AS ${basis.column}`).join(', ')},
  ${regressorMeans(catalogue.all)}
  ${[...publishedGradients.keys()].map((id) => `AVG(r.${gradientColumn(id)}) AS ${gradientColumn(id)},`).join(' ')}
  ${catalogue.all.map((measure) => `AVG(r.${measure.id}) AS ${measure.id}`).join(', ')}
FROM ${tables.from} AS r
GROUP BY r.client_key, r.visit_date, r.visit_purpose, r.device, r.frequency_khz`,
    `CREATE OR REPLACE TABLE ${tables.to} AS
WITH numbered AS (
  SELECT m.*, BIT_OR(m.reading_guards & ${geometry}) OVER (
      PARTITION BY client_key ORDER BY visit_date, first_reading_key ROWS BETWEEN UNBOUNDED PRECEDING AND CURRENT ROW) AS geometry_so_far,
    CAST(ROW_NUMBER() OVER (PARTITION BY client_key ORDER BY visit_date, first_reading_key) AS INTEGER) AS visit_no,
    CASE WHEN visit_purpose IN ('routine', 'repeat') AND (frequency_khz = 50E0 OR MAX(CASE WHEN frequency_khz = 50E0 THEN 1 ELSE 0 END)
      OVER (PARTITION BY client_key, visit_date, visit_purpose, device) = 0) THEN 1 ELSE 0 END AS in_series
  FROM visit_means AS m
)
SELECT numbered.*, reading_guards | (CASE WHEN whole_body_denied = 1 THEN 0 ELSE geometry_so_far END) AS guards,
  CAST(SUM(CASE WHEN reading_guards & ${pregnancy} <> 0 THEN 1 ELSE 0 END) OVER (
  PARTITION BY client_key ORDER BY visit_no ROWS BETWEEN UNBOUNDED PRECEDING AND CURRENT ROW) AS INTEGER) AS pregnancies_so_far
FROM numbered`,
    // A copy of every mean less: a million readings have to fit into the memory of a page.
    'DROP TABLE visit_means',
  ];
};
