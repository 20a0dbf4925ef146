import { compileExpression } from '../../measures/compile-sql';
import { equationExpression, type Equation } from '../../measures/equation';
import { inCommonUnit } from '../../measures/in-common-unit';
import { inputsOf } from '../../measures/inputs-of';
import { guardMask, guardsOf } from '../../measures/guard';
import type { Measure } from '../../measures/measure';
import type { MeasureId } from '../../measures/measure-id';
import { difference, input, type Expression } from '../../measures/expression';
import { substitute } from '../../measures/substitute';
import type { CohortModel } from '../model';
import { outsideConditions, outsidePath } from './outside-equation-sql';

const PEOPLE = `(f.program IS NULL OR EXISTS (SELECT 1 FROM enrolments AS e WHERE e.client_key = v.client_key AND e.program = f.program))
  AND (f.site IS NULL OR v.site = f.site) AND (f.sex IS NULL OR v.sex = f.sex)
  AND (f.age_from IS NULL OR v.completed_age >= f.age_from) AND (f.age_to IS NULL OR v.completed_age <= f.age_to)`;

const anyOutside = (equation: Equation, visit: string): string => {
  const conditions = outsideConditions(equation, visit);
  return conditions.length === 0 ? 'FALSE' : conditions.map(({ when }) => `COALESCE(${when}, FALSE)`).join(' OR ');
};

/** Visits with an equation's value, and those of them outside its group, by what they miss. One row. */
export const fitQuery = (equation: Equation): string => `SELECT COUNT(*) AS visits,
  COUNT(*) FILTER (WHERE NOT (${anyOutside(equation, 'v')})) AS inside
  ${outsideConditions(equation, 'v')
    .map(({ code, when }) => `, COUNT(*) FILTER (WHERE COALESCE(${when}, FALSE)) AS ${code}`)
    .join('')}
FROM visits AS v CROSS JOIN filter AS f
WHERE v.${equation.quantity} IS NOT NULL AND ${PEOPLE}`;

/** How the visits with a resistance were measured, and how many in each way. */
export const measuredWaysQuery = `SELECT NULLIF(v.device, '') AS device, v.electrode_path, v.posture, v.frequency_khz, COUNT(*) AS visits
FROM visits AS v CROSS JOIN filter AS f
WHERE v.r IS NOT NULL AND ${PEOPLE}
GROUP BY NULLIF(v.device, ''), v.electrode_path, v.posture, v.frequency_khz
ORDER BY COUNT(*) DESC, 1, 2, 3, 4`;

const isStopped = (measures: readonly Measure[], { guards }: CohortModel, visit: string): string =>
  [
    `${visit}.guards & ${String(guardMask(measures.flatMap((measure) => guards(measure).stop)))} <> 0`,
    ...measures.map((measure) => outsidePath(measure, visit)),
  ].join(' OR ');

/** Each client's latest series visit that holds both values and where no guard stops either. */
export const agreementQuery = (
  computed: MeasureId,
  exported: MeasureId,
  model: CohortModel,
): string => `WITH both_held AS (
  SELECT v.client_key, v.visit_date, v.${computed} AS computed, v.${exported} AS exported,
    ROW_NUMBER() OVER (PARTITION BY v.client_key ORDER BY v.visit_no DESC) AS place
  FROM visits AS v CROSS JOIN filter AS f
  WHERE v.in_series = 1 AND v.${computed} IS NOT NULL AND v.${exported} IS NOT NULL AND ${PEOPLE}
    AND NOT (${isStopped([model.catalogue.measure(computed), model.catalogue.measure(exported)], model, 'v')})
)
SELECT b.client_key, c.client_id, b.visit_date, b.computed, b.exported
FROM both_held AS b JOIN clients AS c ON c.client_key = b.client_key
WHERE b.place = 1 ORDER BY c.client_id`;

/** An equation on readings: fat-free and fat mass in it are those that the equation in force computes. */
const onReadings = (equation: Equation, { catalogue }: CohortModel): Expression => {
  const fatFreeMass = equationExpression(catalogue.equations.ffm);
  const withFat = substitute(inCommonUnit(equation), 'fm_kg', difference(input('weight_kg'), fatFreeMass));
  return substitute(withFat, 'ffm_kg', fatFreeMass);
};

/** What stops an equation's value at a visit: as for the values that are followed, and the path of the FFM that it reads. */
const stopsEquation = (equation: Equation, { catalogue }: CohortModel, visit: string): string => {
  const readsComposition = inputsOf(equationExpression(equation)).some((id) => id === 'ffm_kg' || id === 'fm_kg');
  const isComposition = equation.quantity !== 'ree' || readsComposition;
  return [
    `${visit}.guards & ${String(guardMask(guardsOf({ group: isComposition ? 'composition' : 'bmi' }).stop))} <> 0`,
    outsidePath({ equation }, visit),
    ...(readsComposition ? [outsidePath({ equation: catalogue.equations.ffm }, visit)] : []),
  ].join(' OR ');
};

/**
 * Values of several equations at each client's latest series visit where nothing stops the first, means over its readings,
 * with whether the visit lies outside an equation's group. A value that a guard stops is unknown. Columns `value_<i>` and `outside_<i>` in the order of the equations.
 */
export const comparisonQuery = (equations: readonly Equation[], model: CohortModel): string => {
  const [against] = equations;
  const readsImpedance = against !== undefined && inputsOf(onReadings(against, model)).includes('r_ohm');
  const holds = readsImpedance ? 'v.r_h' : 'v.weight';
  return `WITH latest AS (
  SELECT v.*, ROW_NUMBER() OVER (PARTITION BY v.client_key ORDER BY v.visit_no DESC) AS place
  FROM visits AS v CROSS JOIN filter AS f
  WHERE v.in_series = 1 AND ${holds} IS NOT NULL AND ${PEOPLE}
    ${against === undefined ? '' : `AND NOT (${stopsEquation(against, model, 'v')})`}
),
computed AS (
  SELECT r.client_key, ${equations
    .map((equation, index) => `AVG(${compileExpression(onReadings(equation, model))}) AS value_${String(index)}`)
    .join(',\n    ')}
  FROM reading_values AS r
  WHERE EXISTS (SELECT 1 FROM latest AS v WHERE v.place = 1 AND r.client_key = v.client_key
    AND r.visit_date = v.visit_date AND r.visit_purpose = v.visit_purpose AND r.device = v.device
    AND r.frequency_khz = v.frequency_khz)
  GROUP BY r.client_key
)
SELECT v.client_key, ${equations
    .map(
      (equation, index) =>
        `CASE WHEN NOT (${stopsEquation(equation, model, 'v')}) THEN m.value_${String(index)} END AS value_${String(index)}, CASE WHEN ${anyOutside(equation, 'v')} THEN 1 ELSE 0 END AS outside_${String(index)}`,
    )
    .join(', ')}
FROM latest AS v JOIN computed AS m ON m.client_key = v.client_key
WHERE v.place = 1 ORDER BY v.client_key`;
};
