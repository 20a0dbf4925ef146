import type { Column } from './column';
import { COLUMNS, ENROLMENT_COLUMNS, VALUE_COLUMNS } from './columns';
import { typedExpression } from './typed-expression';

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

const NO_CLIENT = finding('client_id IS NULL', 'refused', 'no_client', 'client_id');

const VISIT_FINDINGS: readonly string[] = [
  NO_CLIENT,
  finding('visit_date IS NULL', 'refused', 'no_date', 'visit_date'),
  finding('v_visit_date > imported_on', 'refused', 'after_import', 'visit_date'),
  finding('v_visit_date < v_birth_date', 'refused', 'before_birth', 'visit_date'),
  finding(
    'v_birth_date IS NULL AND EXTRACT(YEAR FROM v_visit_date) < v_birth_year',
    'refused',
    'before_birth',
    'visit_date',
  ),
  finding(`${VALUE_COLUMNS.map((name) => `${name} IS NULL`).join(' AND ')}`, 'refused', 'no_value', 'client_id'),
  finding('v_xc_ohm > v_r_ohm AND v_r_ohm >= 100 AND v_xc_ohm <= 300', 'question', 'above_resistance', 'xc_ohm'),
  ...COLUMNS.flatMap(columnFindings),
];

const ENROLMENT_FINDINGS: readonly string[] = [
  NO_CLIENT,
  finding('program IS NULL', 'refused', 'no_program', 'program'),
  finding('v_program_end < v_program_start', 'refused', 'end_before_start', 'program_end'),
  ...ENROLMENT_COLUMNS.flatMap(columnFindings),
];

/**
 * The text that judges every row of `<prefix>chunk` in one pass: `<prefix>found` gets one row for every cell with
 * something to say. Only `try_cast` touches a cell.
 */
export const verdictStatement = (prefix: string, role: 'visits' | 'enrolment'): string => {
  const typed = COLUMNS.map((column) => `${typedExpression(column, 'c.')} AS v_${column.name}`).join(', ');
  const findings = (role === 'visits' ? VISIT_FINDINGS : ENROLMENT_FINDINGS).join(',\n');
  return `INSERT INTO ${prefix}found
WITH typed AS (
  SELECT c.*, f.imported_on, ${typed} FROM ${prefix}chunk AS c JOIN ${prefix}files AS f ON f.file_no = c.file_no
  WHERE c.trouble IS NULL
),
judged AS (
  SELECT file_no, line_no, part_no, client_id, visit_date,
    UNNEST(LIST_FILTER([${findings}], x -> x IS NOT NULL)) AS finding
  FROM typed
)
SELECT file_no, line_no, part_no, client_id, visit_date,
  finding.kind AS kind, finding.code AS code, finding.column_name AS column_name, finding.cell AS cell, NULL AS became
FROM judged`;
};
