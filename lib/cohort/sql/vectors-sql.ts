import { guardMask } from '../../measures/guard';
import type { CohortModel } from '../model';
import { joinLater } from './converted-sql';

const stopped = ({ catalogue, guards }: CohortModel): string =>
  String(guardMask(guards(catalogue.measure('r_h')).stop));

const FILTERED = `(f.program IS NULL OR e.program = f.program) AND (f.site IS NULL OR v.site = f.site)
  AND (f.sex IS NULL OR v.sex = f.sex) AND (f.age_from IS NULL OR v.completed_age >= f.age_from)
  AND (f.age_to IS NULL OR v.completed_age <= f.age_to)`;

const sums = (source: string, by: string): string => `means AS (
  SELECT ${by}, COUNT(*) AS n, AVG(x) AS mx, AVG(y) AS my FROM ${source} GROUP BY ${by}
),
sums AS (
  SELECT ${by
    .split(', ')
    .map((name) => `m.${name}`)
    .join(', ')}, MIN(m.n) AS n, MIN(m.mx) AS mx, MIN(m.my) AS my,
    SUM((q.x - m.mx) * (q.x - m.mx)) AS sxx, SUM((q.x - m.mx) * (q.y - m.my)) AS sxy, SUM((q.y - m.my) * (q.y - m.my)) AS syy
  FROM means AS m JOIN ${source} AS q ON ${by
    .split(', ')
    .map((name) => `q.${name} = m.${name}`)
    .join(' AND ')}
  GROUP BY ${by
    .split(', ')
    .map((name) => `m.${name}`)
    .join(', ')}
)
SELECT ${by}, n, mx, my, sxx, sxy, syy FROM sums ORDER BY ${by}`;

/** `latest`: the last vector of every enrolment (x = R/H, y = Xc/H, Ω/m) that no guard stops. */
const latest = (model: CohortModel): string => `latest AS (
  SELECT e.program, v.sex, v.client_key, v.visit_date, v.r_h AS x, v.xc_h AS y, v.phase_angle,
    COALESCE(v.posture, '') AS posture, COALESCE(v.electrode_path, '') AS electrode_path
  FROM enrolment_latest AS e
  JOIN visits AS v ON v.client_key = e.client_key AND v.visit_no = e.latest_vector
  CROSS JOIN filter AS f
  WHERE v.sex IS NOT NULL AND v.frequency_khz = 50E0 AND v.guards & ${stopped(model)} = 0 AND ${FILTERED}
)`;

export const groupSumsQuery = (model: CohortModel): string =>
  `WITH ${latest(model)}, ${sums('latest', 'program, sex')}`;

/** How the people of each group were measured: an empty text where it is not recorded. */
export const vectorWaysQuery = (model: CohortModel): string => `WITH ${latest(model)}
SELECT program, sex, posture, electrode_path, COUNT(*) AS n FROM latest
GROUP BY program, sex, posture, electrode_path ORDER BY program, sex, n DESC NULLS LAST, posture, electrode_path`;

/** People under the filter who are in no group, by the first of the reasons that holds. */
export const vectorsLeftOutQuery = (model: CohortModel): string => `WITH people AS (
  SELECT e.client_key, MAX(CASE WHEN e.latest_vector IS NOT NULL THEN 1 ELSE 0 END) AS measured,
    MAX(CASE WHEN v.sex IS NOT NULL THEN 1 ELSE 0 END) AS coded,
    MAX(CASE WHEN e.latest_vector IS NOT NULL AND v.frequency_khz = 50E0 THEN 1 ELSE 0 END) AS at_50,
    MAX(CASE WHEN e.latest_vector IS NOT NULL AND v.sex IS NOT NULL AND v.frequency_khz = 50E0
      AND v.guards & ${stopped(model)} = 0 THEN 1 ELSE 0 END) AS drawn
  FROM enrolment_latest AS e
  JOIN visits AS v ON v.client_key = e.client_key AND v.visit_no = COALESCE(e.latest_vector, e.latest_no)
  CROSS JOIN filter AS f
  WHERE ${FILTERED}
  GROUP BY e.client_key
)
SELECT COUNT(*) FILTER (WHERE drawn = 0 AND measured = 0) AS no_vector,
  COUNT(*) FILTER (WHERE drawn = 0 AND measured = 1 AND coded = 0) AS no_sex,
  COUNT(*) FILTER (WHERE drawn = 0 AND measured = 1 AND coded = 1 AND at_50 = 0) AS other_frequency,
  COUNT(*) FILTER (WHERE drawn = 0 AND measured = 1 AND coded = 1 AND at_50 = 1) AS stopped
FROM people`;

export const vectorPointsQuery = (model: CohortModel): string => `WITH ${latest(model)}
SELECT l.program, l.sex, l.client_key, c.client_id, l.visit_date, l.x, l.y, l.phase_angle
FROM latest AS l JOIN clients AS c ON c.client_key = l.client_key ORDER BY l.program, c.client_id`;

/** Baseline→latest vector changes that take part under the filter's setting. */
export const pairedSumsQuery = (model: CohortModel): string => `WITH moved AS (
  SELECT p.program, b.r_h - a.r_h AS x, b.xc_h - a.xc_h AS y
  FROM pairs AS p
  CROSS JOIN filter AS f
  JOIN visits AS a ON a.client_key = p.client_key AND a.visit_no = p.from_no
  ${joinLater(model, 'p', 'p.target_no')}
  WHERE p.purpose = 1 AND p.bases & ${String(1 << model.bases.of(model.catalogue.measure('r_h')).index)} <> 0
    AND a.xc_h IS NOT NULL AND b.xc_h IS NOT NULL AND a.frequency_khz = 50E0 AND b.frequency_khz = 50E0 AND p.pair_rank <= f.rank_limit AND p.guards & ${stopped(model)} = 0
    AND (f.program IS NULL OR p.program = f.program) AND (f.site IS NULL OR p.site = f.site)
    AND (f.sex IS NULL OR p.sex = f.sex) AND (f.age_from IS NULL OR p.completed_age >= f.age_from)
    AND (f.age_to IS NULL OR p.completed_age <= f.age_to)
), ${sums('moved', 'program')}`;

/** Every client's first baseline, by sex and way of measuring: what the clinic's own reference is made of. Not filtered. */
export const referenceSumsQuery = (model: CohortModel): string => `WITH firsts AS (
  SELECT e.client_key, e.baseline_no, ROW_NUMBER() OVER (PARTITION BY e.client_key ORDER BY e.enrolment_no) AS place
  FROM enrolments AS e WHERE e.baseline_no IS NOT NULL
),
baseline_vectors AS (
  SELECT v.sex, COALESCE(v.posture, '') AS posture, COALESCE(v.electrode_path, '') AS electrode_path, v.r_h AS x, v.xc_h AS y
  FROM firsts JOIN visits AS v ON v.client_key = firsts.client_key AND v.visit_no = firsts.baseline_no
  WHERE firsts.place = 1 AND v.sex IS NOT NULL AND v.frequency_khz = 50E0 AND v.r_h IS NOT NULL AND v.xc_h IS NOT NULL AND v.guards & ${stopped(model)} = 0
), ${sums('baseline_vectors', 'sex, posture, electrode_path')}`;
