import type { Column } from './column';
import { COLUMNS, VALUE_COLUMNS } from './columns';

const TIME_SHAPES = ['_:__', '__:__', '_:__:__', '__:__:__'];

/**
 * The text of a cell as its type, NULL where it cannot be read. Narrower than the engine's casts, which also take
 * `1_000`, `0x1F`, `+-5`, `2025-03-4x` or `08:3`: what a person may have meant otherwise is not guessed.
 */
const typedExpression = (column: Column): string => {
  const { name } = column;
  switch (column.type) {
    case 'text':
      return name;
    case 'date':
      return `CASE WHEN ${name} LIKE '____-__-__' AND ${name} >= '1800' AND CAST(TRY_CAST(${name} AS DATE) AS VARCHAR) = ${name}
  THEN TRY_CAST(${name} AS DATE) END`;
    case 'time':
      return `CASE WHEN (${TIME_SHAPES.map((shape) => `${name} LIKE '${shape}'`).join(' OR ')})
  AND TRY_CAST(${name} AS TIME) < TIME '24:00' THEN SUBSTR(CAST(TRY_CAST(${name} AS TIME) AS VARCHAR), 1, 5) END`;
    case 'integer':
      return `CASE WHEN LENGTH(${name}) <= 4 AND TRANSLATE(${name}, '0123456789', '') = '' THEN TRY_CAST(${name} AS INTEGER) END`;
    case 'number':
      return `CASE WHEN ISFINITE(TRY_CAST(${name} AS DOUBLE)) AND NOT CONTAINS(${name}, '_') AND NOT STARTS_WITH(${name}, '+-')
  THEN TRY_CAST(${name} AS DOUBLE) END`;
    case 'flag':
      return `CASE LOWER(${name}) WHEN 'y' THEN 1 WHEN 'n' THEN 0 END`;
    case 'choice':
      return `CASE ${(column.choices ?? [])
        .map((choice) => `WHEN LOWER(${name}) = '${choice.toLowerCase()}' THEN '${choice}'`)
        .join(' ')} END`;
  }
};

type Kind = 'refused' | 'question' | 'warning';

const finding = (when: string, kind: Kind, code: string, column: string): string =>
  `CASE WHEN ${when} THEN {'kind': '${kind}', 'code': '${code}', 'column_name': '${column}', 'cell': ${column}} END`;

const outside = (column: string, [low, high]: readonly [number, number]): string =>
  `(v_${column} < ${String(low)} OR v_${column} > ${String(high)})`;

const limitFindings = (column: Column): readonly string[] => {
  const { name, limits } = column;
  if (limits === undefined) return [];
  const positive = limits.positive === true ? `v_${name} > 0 AND ` : '';
  const far = limits.ask === undefined ? 'FALSE' : outside(name, limits.ask);
  return [
    ...(limits.positive === true ? [finding(`v_${name} <= 0`, 'refused', 'not_positive', name)] : []),
    ...(limits.ask === undefined
      ? []
      : [finding(`${positive}${outside(name, limits.ask)}`, 'question', 'far_off', name)]),
    ...(limits.warn === undefined
      ? []
      : [finding(`${positive}NOT ${far} AND ${outside(name, limits.warn)}`, 'warning', 'implausible', name)]),
    ...(limits.rareAbove === undefined || limits.warn === undefined
      ? []
      : [
          finding(
            `v_${name} > ${String(limits.rareAbove)} AND v_${name} <= ${String(limits.warn[1])}`,
            'warning',
            'rare',
            name,
          ),
        ]),
  ];
};

const columnFindings = (column: Column): readonly string[] => {
  if (column.type === 'text') return [];
  const unreadable = `${column.name} IS NOT NULL AND v_${column.name} IS NULL`;
  return [
    column.lenient === true
      ? finding(unreadable, 'warning', 'unknown_word', column.name)
      : finding(unreadable, 'refused', `unreadable_${column.type}`, column.name),
    ...limitFindings(column),
  ];
};

const ROW_FINDINGS: readonly string[] = [
  finding('client_id IS NULL', 'refused', 'no_client', 'client_id'),
  finding('visit_date IS NULL', 'refused', 'no_date', 'visit_date'),
  finding('v_visit_date > t.today', 'refused', 'after_import', 'visit_date'),
  finding('v_visit_date < v_birth_date', 'refused', 'before_birth', 'visit_date'),
  finding(
    'v_birth_date IS NULL AND EXTRACT(YEAR FROM v_visit_date) < v_birth_year',
    'refused',
    'before_birth',
    'visit_date',
  ),
  finding(`${VALUE_COLUMNS.map((name) => `${name} IS NULL`).join(' AND ')}`, 'refused', 'no_value', 'client_id'),
  finding('v_xc_ohm > v_r_ohm AND v_r_ohm >= 100 AND v_xc_ohm <= 300', 'question', 'above_resistance', 'xc_ohm'),
];

/**
 * Texts that judge every row of `<prefix>raw` in one pass: `<prefix>typed` holds each cell as its type beside the text,
 * `<prefix>found` one row for every cell with something to say. Only `try_cast` touches a cell.
 */
export const verdictStatements = (prefix: string): readonly string[] => {
  const trimmed = COLUMNS.map((column) => `NULLIF(TRIM(${column.name}), '') AS ${column.name}`).join(', ');
  const typed = COLUMNS.map((column) => `${typedExpression(column)} AS v_${column.name}`).join(', ');
  const findings = [...ROW_FINDINGS, ...COLUMNS.flatMap(columnFindings)].join(',\n');
  return [
    `CREATE OR REPLACE TABLE ${prefix}typed AS
WITH cells AS (SELECT file_no, line_no, extra, ${trimmed} FROM ${prefix}raw)
SELECT cells.*, ${typed} FROM cells`,
    `CREATE OR REPLACE TABLE ${prefix}found AS
WITH judged AS (
  SELECT file_no, line_no, client_id, visit_date,
    UNNEST(LIST_FILTER([${findings}], x -> x IS NOT NULL)) AS finding
  FROM ${prefix}typed CROSS JOIN ${prefix}today AS t
)
SELECT file_no, line_no, client_id, visit_date,
  finding.kind AS kind, finding.code AS code, finding.column_name AS column_name, finding.cell AS cell
FROM judged`,
  ];
};
