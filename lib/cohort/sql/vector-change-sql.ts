import { guardMask } from '../../measures/guard';
import type { CohortModel } from '../model';
import { WITH_DEVICE } from './pairs-sql';

const stopMask = ({ catalogue, guards }: CohortModel): string =>
  String(guardMask(guards(catalogue.measure('r_h')).stop));

/** What a conversion between devices adds to the error of a vector is not known, so such a pair stays apart here. */
const RANK = '(CASE WHEN p.target_no >= 0 THEN 3 ELSE p.pair_rank END)';

/** Every pair whose two visits hold a vector at 50 kHz (x = R/H, y = Xc/H, Ω/m), under the filter, by client and date. */
export const vectorChangesQuery = (model: CohortModel): string => {
  const basis = model.bases.of(model.catalogue.measure('r_h'));
  return `SELECT p.purpose, p.client_key, c.client_id, p.program, p.from_no, p.to_no, ${WITH_DEVICE.replaceAll(/\b(broken|target_no)\b/g, 'p.$1')} AS broken, p.unknown, ${RANK} AS pair_rank,
  a.visit_date AS from_date, b.visit_date AS to_date, a.${basis.column} AS k_from, b.${basis.column} AS k_to,
  a.r_h AS x_from, a.xc_h AS y_from, b.r_h AS x_to, b.xc_h AS y_to,
  p.guards & ${stopMask(model)} AS stops, CASE WHEN ${RANK} <= f.rank_limit THEN 1 ELSE 0 END AS admitted
FROM pairs AS p
CROSS JOIN filter AS f
JOIN visits AS a ON a.client_key = p.client_key AND a.visit_no = p.from_no
JOIN visits AS b ON b.client_key = p.client_key AND b.visit_no = p.to_no
JOIN clients AS c ON c.client_key = p.client_key
WHERE p.purpose = f.purpose AND p.bases & ${String(1 << basis.index)} <> 0 AND a.xc_h IS NOT NULL AND b.xc_h IS NOT NULL
  AND a.frequency_khz = 50E0 AND b.frequency_khz = 50E0
  AND (f.program IS NULL OR p.program = f.program) AND (f.site IS NULL OR p.site = f.site)
  AND (f.sex IS NULL OR p.sex = f.sex) AND (f.age_from IS NULL OR p.completed_age >= f.age_from)
  AND (f.age_to IS NULL OR p.completed_age <= f.age_to) AND (f.client_key IS NULL OR p.client_key = f.client_key)
ORDER BY c.client_id, p.program, to_date, from_date, p.from_no, p.to_no`;
};

/** The vectors of one client's own visits, and whether a guard stops them. */
export const clientVectorsQuery = (
  model: CohortModel,
): string => `SELECT v.visit_no, v.r_h AS x, v.xc_h AS y, v.phase_angle,
  v.guards & ${stopMask(model)} AS stops
FROM visits AS v CROSS JOIN filter AS f
WHERE v.client_key = f.client_key AND v.in_series = 1 AND v.frequency_khz = 50E0
  AND v.r_h IS NOT NULL AND v.xc_h IS NOT NULL
ORDER BY v.visit_no`;

/** Spread of the vectors of other people of the client's sex at their first baseline: n, means and centred sums. */
export const othersSumsQuery = (model: CohortModel): string => `WITH firsts AS (
  SELECT e.client_key, e.baseline_no, ROW_NUMBER() OVER (PARTITION BY e.client_key ORDER BY e.enrolment_no) AS place
  FROM enrolments AS e WHERE e.baseline_no IS NOT NULL
),
others AS (
  SELECT v.r_h AS x, v.xc_h AS y
  FROM firsts AS o
  CROSS JOIN filter AS f
  JOIN clients AS own ON own.client_key = f.client_key
  JOIN visits AS v ON v.client_key = o.client_key AND v.visit_no = o.baseline_no
  WHERE o.place = 1 AND o.client_key <> f.client_key AND v.sex = own.sex AND v.frequency_khz = 50E0
    AND v.r_h IS NOT NULL AND v.xc_h IS NOT NULL AND v.guards & ${stopMask(model)} = 0
),
means AS (SELECT COUNT(*) AS n, AVG(x) AS mx, AVG(y) AS my FROM others)
SELECT MIN(m.n) AS n, MIN(m.mx) AS mx, MIN(m.my) AS my, SUM((o.x - m.mx) * (o.x - m.mx)) AS sxx,
  SUM((o.x - m.mx) * (o.y - m.my)) AS sxy, SUM((o.y - m.my) * (o.y - m.my)) AS syy
FROM means AS m JOIN others AS o ON m.n > 0`;
