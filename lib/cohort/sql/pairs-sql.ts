import { guardBit } from '../../measures/guard';
import type { Basis } from '../basis';
import { isExported } from '../is-exported';
import type { CohortModel } from '../model';
import { purposeNumber } from '../purpose-number';
import { masksFor, ruleBit, type PairMasks } from '../rules-in-force';
import { brokenByPair } from './rule-masks-sql';

/** A pair's rank from masks: 0 comparable, 1 by procedure, 2 with a caution, 3 cannot be compared. */
export const rankExpression = (
  broken: string,
  unknown: string,
  byProcedure: string,
  { no, caution }: PairMasks,
): string => {
  const graded = String(no | caution);
  return `CASE WHEN ${broken} & ${String(no)} <> 0 THEN 3
    WHEN ${broken} & ${String(caution)} <> 0 OR ${unknown} & ${graded} <> 0 THEN 2
    WHEN ${byProcedure} & ${graded} <> 0 THEN 1 ELSE 0 END`;
};

const previousOf = (bases: readonly Basis[]): string =>
  bases
    .map(
      (basis) =>
        `CASE WHEN ${basis.column} > 0 THEN MAX(CASE WHEN ${basis.column} > 0 THEN visit_no END) OVER earlier END AS from_${String(basis.index)}`,
    )
    .join(',\n    ');

const pickConsecutive = (bases: readonly Basis[]): string =>
  bases
    .map(
      (
        basis,
      ) => `SELECT client_key, visit_no AS to_no, from_${String(basis.index)} AS from_no, ${String(1 << basis.index)} AS bit
  FROM previous WHERE from_${String(basis.index)} IS NOT NULL`,
    )
    .join('\n  UNION ALL ');

const pickLatest = (bases: readonly Basis[]): string =>
  bases
    .map(
      (
        basis,
      ) => `SELECT l.client_key, l.enrolment_no, l.baseline_no AS from_no, l.latest_${String(basis.index)} AS to_no, ${String(1 << basis.index)} AS bit
  FROM enrolment_latest AS l JOIN visits AS b ON b.client_key = l.client_key AND b.visit_no = l.baseline_no
  WHERE l.latest_${String(basis.index)} IS NOT NULL AND b.${basis.column} > 0`,
    )
    .join('\n  UNION ALL ');

const REVIEW = {
  closest: purposeNumber('baseline-review', 'closest'),
  best: purposeNumber('baseline-review', 'closest-comparable'),
  first: purposeNumber('baseline-review', 'first-in-window'),
} as const;

const pickReviews = (bases: readonly Basis[]): string =>
  bases
    .flatMap((basis) =>
      (
        [
          [REVIEW.closest, `seen_${String(basis.index)}`],
          [REVIEW.first, `first_${String(basis.index)}`],
        ] as const
      ).map(
        ([
          purpose,
          visit,
        ]) => `SELECT ${String(purpose)} AS purpose, w.client_key, w.enrolment_no, w.review_week, w.baseline_no AS from_no, w.${visit} AS to_no, 0 AS distance, ${String(1 << basis.index)} AS bit
  FROM reviews AS w JOIN visits AS b ON b.client_key = w.client_key AND b.visit_no = w.baseline_no
  WHERE w.due = 1 AND w.${visit} > w.baseline_no AND b.${basis.column} > 0`,
      ),
    )
    .join('\n  UNION ALL ');

/** Every visit of a due window, for the bases that it and the baseline hold: which of them is taken depends on the grades. */
const pickInWindow = (
  bases: readonly Basis[],
): string => `SELECT ${String(REVIEW.best)} AS purpose, w.client_key, w.enrolment_no, w.review_week, w.baseline_no AS from_no, i.visit_no AS to_no, i.distance,
    ${bases.map(({ index, column }) => `CASE WHEN b.${column} > 0 AND i.${column} > 0 THEN ${String(1 << index)} ELSE 0 END`).join(' + ')} AS bit
  FROM reviews AS w
  JOIN review_visits AS i ON i.enrolment_no = w.enrolment_no AND i.review_week = w.review_week
  JOIN visits AS b ON b.client_key = w.client_key AND b.visit_no = w.baseline_no
  WHERE w.due = 1 AND i.visit_no > w.baseline_no`;

/** 2²⁰, more than any client's visits; no window is as long in days. */
const PLACES = 1_048_576;

/** A visit of a window as one number, the best the lowest: grade, then distance, then the earlier. */
const placeInWindow = (rank: string): string =>
  `(CAST(CASE WHEN ${rank} <= 1 THEN 0 ELSE ${rank} END AS BIGINT) * ${String(PLACES)} + distance) * ${String(PLACES)} + to_no`;

/** What a device computed itself is never converted: for it another device stays another device. */
export const WITH_DEVICE = `(broken | (CASE WHEN target_no >= 0 THEN ${String(ruleBit('device'))} ELSE 0 END))`;

const PAIR_COLUMNS = [
  ...[
    'purpose',
    'review_week',
    'client_key',
    'enrolment_no',
    'from_no',
    'to_no',
    'program',
    'site',
    'sex',
    'completed_age',
  ],
  ...['days', 'broken', 'target_no', 'unknown', 'by_procedure', 'guards', 'pair_rank', 'pair_rank_exported'],
];

const pairColumns = (table: string): string => PAIR_COLUMNS.map((column) => `${table}${column}`).join(', ');

/**
 * `pairs`: which two visits of a client are compared for which purpose (0 consecutive, 1 baseline→latest, 2
 * baseline→planned review, of reviews that are due; 3 and 4 the same with its sensitivities), for which bases, with masks, ranks and the filter's dimensions. Built once per data version and settings.
 */
export const pairsStatements = ({
  rules,
  masks,
  bases,
  catalogue,
  lean,
  conversionTargets,
}: CohortModel): readonly string[] => {
  const pregnancy = String(guardBit('pregnancy'));
  const device = String(ruleBit('device'));
  const converted = conversionTargets > 0;
  const exported = new Set(catalogue.all.filter(isExported).map((measure) => bases.of(measure).index));
  const placeOf = (index: number, table = ''): string =>
    placeInWindow(exported.has(index) ? 'pair_rank_exported' : 'pair_rank').replaceAll(
      /\b(pair_rank_exported|pair_rank|distance|to_no)\b/g,
      `${table}$1`,
    );
  const broken = `a.broken | b.broken | ${brokenByPair(rules)}`;
  return [
    `CREATE OR REPLACE TABLE chosen_pairs AS
WITH previous AS (
  SELECT client_key, visit_no,
    ${previousOf(bases.list)}
  FROM visits WHERE in_series = 1
  WINDOW earlier AS (PARTITION BY client_key ORDER BY visit_no ROWS BETWEEN UNBOUNDED PRECEDING AND 1 PRECEDING)
),
consecutive AS (
  ${pickConsecutive(bases.list)}
),
grouped AS (SELECT client_key, from_no, to_no, BIT_OR(bit) AS bases FROM consecutive GROUP BY client_key, from_no, to_no),
open_then AS (
  SELECT g.client_key, g.from_no, g.to_no, g.bases, e.enrolment_no, ROW_NUMBER() OVER (
    PARTITION BY g.client_key, g.from_no, g.to_no
    ORDER BY CASE WHEN (e.program_start IS NULL OR e.program_start <= v.visit_date)
      AND (e.program_end IS NULL OR e.program_end >= v.visit_date) THEN 0
      WHEN e.program_start <= v.visit_date THEN 1 ELSE 2 END,
    e.program_start DESC NULLS LAST, e.enrolment_no) AS place
  FROM grouped AS g
  JOIN visits AS v ON v.client_key = g.client_key AND v.visit_no = g.to_no
  JOIN enrolments AS e ON e.client_key = g.client_key
),
latest AS (
  ${pickLatest(bases.list)}
),
reviewed AS (
  ${pickReviews(bases.list)}
  UNION ALL ${pickInWindow(bases.list)}
)
SELECT 0 AS purpose, CAST(NULL AS DOUBLE PRECISION) AS review_week, client_key, enrolment_no, from_no, to_no, bases, 0 AS distance FROM open_then WHERE place = 1
UNION ALL
SELECT 1, CAST(NULL AS DOUBLE PRECISION), client_key, enrolment_no, from_no, to_no, BIT_OR(bit), 0 FROM latest GROUP BY client_key, enrolment_no, from_no, to_no
UNION ALL
SELECT purpose, review_week, client_key, enrolment_no, from_no, to_no, BIT_OR(bit), distance FROM reviewed
GROUP BY purpose, client_key, enrolment_no, review_week, from_no, to_no, distance HAVING BIT_OR(bit) <> 0`,
    `CREATE OR REPLACE TABLE graded_pairs AS
WITH masked AS (
  SELECT c.purpose, c.review_week, c.client_key, c.enrolment_no, c.from_no, c.to_no, c.bases, c.distance,
    e.program, b.site, b.sex, b.completed_age, b.visit_date - a.visit_date AS days,
    ${converted ? `(${broken}) & ~(CASE WHEN h.target_no IS NULL THEN 0 ELSE ${device} END)` : broken} AS broken,
    ${converted ? 'COALESCE(h.target_no, -1)' : '-1'} AS target_no,
    a.unknown | b.unknown AS unknown, a.by_procedure | b.by_procedure AS by_procedure,
    a.guards | b.guards | (CASE WHEN b.pregnancies_so_far > a.pregnancies_so_far
      OR CAST(b.visit_date - a.visit_date AS DOUBLE PRECISION) > 7E0 * b.weeks_after_birth - 84E0
      THEN ${pregnancy} ELSE 0 END) AS guards
  FROM chosen_pairs AS c
  JOIN visits AS a ON a.client_key = c.client_key AND a.visit_no = c.from_no
  JOIN visits AS b ON b.client_key = c.client_key AND b.visit_no = c.to_no
  JOIN enrolments AS e ON e.enrolment_no = c.enrolment_no${
    converted
      ? `
  LEFT JOIN device_targets AS t ON t.device = a.device
  LEFT JOIN device_shifts AS h ON h.target_no = t.target_no AND h.device = b.device`
      : ''
  }
)
SELECT masked.*,
  ${rankExpression('broken', 'unknown', 'by_procedure', masks.computed)} AS pair_rank,
  ${rankExpression(WITH_DEVICE, 'unknown', 'by_procedure', masks.exported)} AS pair_rank_exported
FROM masked`,
    `CREATE OR REPLACE TABLE pairs AS
WITH best AS (
  SELECT enrolment_no, review_week, ${bases.list
    .map(
      ({ index }) =>
        `MIN(CASE WHEN bases & ${String(1 << index)} <> 0 THEN ${placeOf(index)} END) AS best_${String(index)}`,
    )
    .join(',\n    ')}
  FROM graded_pairs WHERE purpose = ${String(REVIEW.best)} GROUP BY enrolment_no, review_week
),
taken AS (
  SELECT g.enrolment_no, g.review_week, g.to_no, ${bases.list
    .map(
      ({ index }) =>
        `CASE WHEN g.bases & ${String(1 << index)} <> 0 AND ${placeOf(index, 'g.')} = b.best_${String(index)} THEN ${String(1 << index)} ELSE 0 END`,
    )
    .join(' +\n    ')} AS bases
  FROM graded_pairs AS g
  JOIN best AS b ON b.enrolment_no = g.enrolment_no AND b.review_week = g.review_week
  WHERE g.purpose = ${String(REVIEW.best)}
)
SELECT ${pairColumns('g.')}, g.bases FROM graded_pairs AS g WHERE g.purpose <> ${String(REVIEW.best)}
UNION ALL
SELECT ${pairColumns('g.')}, t.bases FROM graded_pairs AS g
JOIN taken AS t ON t.enrolment_no = g.enrolment_no AND t.review_week = g.review_week AND t.to_no = g.to_no
WHERE g.purpose = ${String(REVIEW.best)} AND t.bases <> 0`,
    'DROP TABLE graded_pairs',
    'DROP TABLE chosen_pairs',
    'DROP TABLE review_visits',
    `CREATE OR REPLACE TABLE baseline_grades AS
WITH masked AS (
  SELECT e.enrolment_no, e.client_key, b.visit_no, a.broken | b.broken | ${brokenByPair(rules)} AS broken,
    a.unknown | b.unknown AS unknown, a.by_procedure | b.by_procedure AS by_procedure
  FROM enrolments AS e
  JOIN visits AS a ON a.client_key = e.client_key AND a.visit_no = e.baseline_no
  JOIN visits AS b ON b.client_key = e.client_key AND b.in_series = 1
)
SELECT enrolment_no, client_key, visit_no,
  ${rankExpression('broken', 'unknown', 'by_procedure', masksFor(masks, catalogue.measure(lean)))} AS grade_rank
FROM masked`,
  ];
};
