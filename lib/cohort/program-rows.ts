import type { Row } from '../engine/types';
import { changeSpread } from '../stats/change-spread';
import { countByErrorP } from '../stats/count-by-error-p';
import { meanInterval } from '../stats/mean-interval';
import { signTestP } from '../stats/sign-test-p';
import { slopeFromError } from '../stats/slope-from-error';
import { asMeantOf, MEANT_COLUMNS, meantCounts } from './as-meant';
import { precisionFor } from './group-precision';
import type { CohortModel } from './model';
import type { ProgramSettings } from './settings-parts/program-settings';
import type { Ask } from './question';
import { changeRows } from './sql/change-sql';
import type { CohortFilter, Purpose } from './types/filter';
import type { CohortErrors, PrecisionRow } from './types/precision-row';
import type { ProgramByError, ProgramRow } from './types/program-row';

const count = (when: string, name: string): string => `COUNT(*) FILTER (WHERE ${when}) AS ${name}`;

const TAKES_PART = 'admitted = 1 AND guard_kind < 2';

/** Sums per program: means first, then squares about them. */
const programQuery = (
  model: CohortModel,
  filter: CohortFilter,
): string => `WITH ${changeRows(model.catalogue.measure(filter.measure), model)},
means AS (
  SELECT program, COUNT(*) AS n_comparable, COUNT(DISTINCT client_key) AS n_people, AVG(change) AS mean_change, AVG(value_from) AS mean_first,
    AVG(lsc * lsc) AS mean_lsc_squared, MIN(CASE WHEN own_error = 1 THEN error_group ELSE '' END) AS first_error,
    MAX(CASE WHEN own_error = 1 THEN error_group ELSE '' END) AS last_error
  FROM change_rows WHERE ${TAKES_PART} GROUP BY program
),
squares AS (
  SELECT m.program, SUM((r.change - m.mean_change) * (r.change - m.mean_change)) AS sum_of_squares,
    SUM((r.value_from - m.mean_first) * (r.value_from - m.mean_first)) AS first_squares
  FROM means AS m JOIN change_rows AS r ON r.program = m.program AND ${TAKES_PART} GROUP BY m.program
),
sharing AS (
  SELECT r.program, COUNT(*) AS n_sharing FROM change_rows AS r
  WHERE ${TAKES_PART} AND EXISTS (
    SELECT 1 FROM change_rows AS q WHERE q.client_key = r.client_key AND q.program = r.program AND q.to_no = r.from_no
      AND q.admitted = 1 AND q.guard_kind < 2)
  GROUP BY r.program
),
counts AS (
  SELECT program, COUNT(*) AS n_pairs, ${[
    count('result_code = 1', 'n_up'),
    count('result_code = -1', 'n_down'),
    count('result_code = 0', 'n_within'),
    count('result_code = 2', 'n_no_threshold'),
    count('result_code = 3', 'n_cannot_compare'),
    count('guard_kind = 2', 'n_held'),
    count('guard_kind = 3', 'n_stopped'),
  ].join(', ')}
  FROM change_rows GROUP BY program
),
${meantCounts},
enrolled AS (
  SELECT e.program, COUNT(DISTINCT e.client_key) AS n_clients
  FROM enrolments AS e
  JOIN clients AS c ON c.client_key = e.client_key
  LEFT JOIN enrolment_latest AS l ON l.enrolment_no = e.enrolment_no
  LEFT JOIN visits AS v ON v.client_key = l.client_key AND v.visit_no = l.latest_no
  CROSS JOIN filter AS f
  WHERE (f.program IS NULL OR e.program = f.program) AND (f.site IS NULL OR v.site = f.site)
    AND (f.sex IS NULL OR c.sex = f.sex) AND (f.age_from IS NULL OR v.completed_age >= f.age_from)
    AND (f.age_to IS NULL OR v.completed_age <= f.age_to)
  GROUP BY e.program
),
listed AS (SELECT program FROM enrolled UNION SELECT program FROM counts)
SELECT l.program, e.n_clients, m.n_comparable, m.n_people, m.mean_lsc_squared, m.first_error, m.last_error, m.mean_change, s.sum_of_squares, s.first_squares, c.n_pairs, c.n_up, c.n_down, c.n_within,
  c.n_no_threshold, c.n_cannot_compare, c.n_held, c.n_stopped, h.n_sharing, ${MEANT_COLUMNS.map((name) => `w.${name}`).join(', ')}
FROM listed AS l
LEFT JOIN enrolled AS e ON e.program = l.program
LEFT JOIN counts AS c ON c.program = l.program
LEFT JOIN means AS m ON m.program = l.program
LEFT JOIN squares AS s ON s.program = l.program
LEFT JOIN sharing AS h ON h.program = l.program
LEFT JOIN meant AS w ON w.program = l.program
ORDER BY l.program`;

/** From this tier on the error is not the clinic's own between-day error: what it alone would give is not known. */
const NOT_OWN_TIER = 3;

/** The one error that judged all pairs of a program; undefined where groups' own errors and everyone's are mixed. */
const errorOf = (row: Row, measure: PrecisionRow['measure'], errors: CohortErrors): PrecisionRow | undefined =>
  row['first_error'] === row['last_error']
    ? precisionFor(errors, measure, String(row['first_error'] ?? ''))
    : undefined;

const byErrorOf = (
  row: Row,
  counts: { readonly up: number; readonly down: number; readonly judged: number },
  sd: number | null,
  precision: PrecisionRow | undefined,
): ProgramByError | null => {
  if (precision === undefined || precision.factor === null || precision.tier >= NOT_OWN_TIER) return null;
  const people = Number(row['n_people'] ?? 0);
  if (counts.judged === 0 || people !== Number(row['n_comparable'])) return null;
  const { factor, dfBetween } = precision;
  const errorVariance = Number(row['mean_lsc_squared'] ?? 0) / factor ** 2;
  const spread =
    sd === null || precision.form === 'log' ? undefined : changeSpread(sd ** 2, errorVariance, people, dfBetween);
  return {
    pUp: countByErrorP(counts.up, counts.judged, factor, dfBetween),
    pDown: countByErrorP(counts.down, counts.judged, factor, dfBetween),
    pUpAgainstDown: signTestP(counts.up, counts.down),
    spread: spread ?? null,
    slope:
      spread === undefined
        ? null
        : (slopeFromError(errorVariance / 2, Number(row['first_squares'] ?? 0) / (people - 1)) ?? null),
  };
};

const programRow = (
  row: Row,
  filter: CohortFilter,
  purpose: Purpose,
  precision: PrecisionRow | undefined,
): Omit<ProgramRow, 'asMeant'> => {
  const n = (name: string): number => Number(row[name] ?? 0);
  const nComparable = n('n_comparable');
  const mean = nComparable === 0 ? null : n('mean_change');
  const sd = nComparable < 2 ? null : Math.sqrt(n('sum_of_squares') / (nComparable - 1));
  const judged = n('n_up') + n('n_down') + n('n_within');
  return {
    program: String(row['program']),
    measure: filter.measure,
    purpose,
    nClients: n('n_clients'),
    nPairs: n('n_pairs'),
    nComparable,
    nSharing: n('n_sharing'),
    mean,
    sd,
    interval: mean === null || sd === null ? null : (meanInterval({ n: nComparable, mean, sd }) ?? null),
    up: n('n_up'),
    down: n('n_down'),
    within: n('n_within'),
    cannotCompare: n('n_cannot_compare'),
    noThreshold: n('n_no_threshold'),
    held: n('n_held'),
    stopped: n('n_stopped'),
    byError: byErrorOf(row, { up: n('n_up'), down: n('n_down'), judged }, sd, precision),
  };
};

/** Outcome of every program for the filter's value, by name: counts, mean change with its 95 % t interval. */
export const programRowsOf = async (
  ask: Ask,
  model: CohortModel,
  filter: CohortFilter,
  {
    purpose,
    errors,
    programs,
  }: {
    readonly purpose: Purpose;
    readonly errors: CohortErrors;
    readonly programs: readonly ProgramSettings[];
  },
  signal?: AbortSignal,
): Promise<readonly ProgramRow[]> => {
  const rows = await ask(programQuery(model, filter), filter, { purpose, signal });
  const meant = { programs, lean: model.lean };
  return rows.map((row) => ({
    ...programRow(row, filter, purpose, errorOf(row, filter.measure, errors)),
    asMeant: asMeantOf(row, filter.measure, meant),
  }));
};
