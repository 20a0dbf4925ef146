import type { Measure } from '../../measures/measure';
import type { CohortModel } from '../model';
import { ruleBit } from '../rules-in-force';
import { rankExpression } from './pairs-sql';
import { reciprocal } from './reciprocal';
import { brokenByPair } from './rule-masks-sql';

/**
 * Two visits of a cross-check: one client, one day, two devices, the first pair of each client and two devices. `kept`:
 * strictly comparable apart from the device. A measure needs its values at both.
 */
const checked = ({ rules, masks }: CohortModel): string => {
  const device = String(ruleBit('device') | ruleBit('software'));
  const broken = `((a.broken | b.broken | ${brokenByPair(rules)}) & ~${device})`;
  return `checked AS (
  SELECT a.client_key, a.visit_date, a.device AS first_device, b.device AS second_device, a.visit_no AS first_no,
    b.visit_no AS second_no,
    CASE WHEN ${rankExpression(broken, `((a.unknown | b.unknown) & ~${device})`, '(a.by_procedure | b.by_procedure)', masks.computed)} <= 1
      THEN 1 ELSE 0 END AS kept,
    ROW_NUMBER() OVER (PARTITION BY a.client_key, a.device, b.device ORDER BY a.visit_date, a.visit_no, b.visit_no) AS place
  FROM visits AS a
  JOIN visits AS b ON b.client_key = a.client_key AND b.visit_date = a.visit_date AND b.visit_purpose = 'crosscheck'
    AND b.device > a.device
  WHERE a.visit_purpose = 'crosscheck' AND a.device <> ''
)`;
};

/** One row per client, day and two devices of the cross-check, with the values of both. */
export const crosscheckRowsQuery = (measures: readonly Measure[], model: CohortModel): string => `WITH ${checked(model)}
SELECT x.client_key, c.client_id, x.visit_date, x.first_device, x.second_device, x.kept,
  ${measures.map(({ id }) => `a.${id} AS first_${id}, b.${id} AS second_${id}`).join(', ')}
FROM checked AS x
JOIN visits AS a ON a.client_key = x.client_key AND a.visit_no = x.first_no
JOIN visits AS b ON b.client_key = x.client_key AND b.visit_no = x.second_no
JOIN clients AS c ON c.client_key = x.client_key
WHERE x.place = 1
ORDER BY x.first_device, x.second_device, c.client_id`;

/**
 * What is left between the devices after conversion, per target and converted device, one row: for each value n, Σd² of
 * (own − converted) and the mean of 1/k₁ + 1/k₂.
 */
export const conversionErrorQuery = (model: CohortModel): string => {
  const { all } = model.catalogue;
  return `WITH ${checked(model)},
ends AS (
  SELECT client_key, first_no AS own_no, second_no AS other_no FROM checked WHERE kept = 1 AND place = 1
  UNION ALL
  SELECT client_key, second_no, first_no FROM checked WHERE kept = 1 AND place = 1
),
measured AS (
  SELECT h.target_no, h.device, a.visit_no, ${all
    .map(({ id }) => `a.${id} - b.${id} AS ${id}`)
    .join(', ')}, ${model.bases.list
    .map(({ column }) => `${reciprocal(`a.${column}`)} + ${reciprocal(`b.${column}`)} AS i${column}`)
    .join(', ')}
  FROM ends AS x
  JOIN visits AS a ON a.client_key = x.client_key AND a.visit_no = x.own_no
  JOIN device_targets AS t ON t.device = a.device
  JOIN visits_converted AS b ON b.client_key = x.client_key AND b.visit_no = x.other_no AND b.target_no = t.target_no
  JOIN device_shifts AS h ON h.target_no = t.target_no AND h.device = b.device
)
SELECT target_no, device, ${all
    .map(
      (measure) => `COUNT(${measure.id}) AS n_${measure.id}, SUM(${measure.id} * ${measure.id}) AS ss_${measure.id},
  AVG(CASE WHEN ${measure.id} IS NOT NULL THEN i${model.bases.of(measure).column} END) AS ik_${measure.id}`,
    )
    .join(', ')}
FROM measured GROUP BY target_no, device ORDER BY target_no, device`;
};
