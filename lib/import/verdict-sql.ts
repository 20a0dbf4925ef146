import type { Column } from './column';
import { COLUMNS, ENROLMENT_COLUMNS, VALUE_COLUMNS } from './columns';
import type { KeptCodes } from './kept-codes';
import { MISSING_CODES } from './missing-words';
import { SUMMARY_WORDS } from './summary-words';
import { typedExpression } from './typed-expression';

type Kind = 'refused' | 'question' | 'warning';

const finding = (when: string, kind: Kind, code: string, column: string): string =>
  `CASE WHEN ${when} THEN {'kind': '${kind}', 'code': '${code}', 'column_name': '${column}', 'cell': ${column}} END`;

const outside = (column: string, [low, high]: readonly [number, number]): string =>
  `(v_${column} < ${String(low)} OR v_${column} > ${String(high)})`;

/** A number without a limit of its own that often stands for a missing one. */
const codeFindings = ({ name, type, limits }: Column, kept: KeptCodes): readonly string[] => {
  const codes = MISSING_CODES.filter((code) => kept.get(name)?.has(code) !== true);
  return type !== 'number' || limits?.ask !== undefined || codes.length === 0
    ? []
    : [finding(`v_${name} IN (${codes.join(', ')})`, 'question', 'missing_code', name)];
};

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

const SHORT_YEAR = '^[0-9]{1,2}[./-] ?[0-9]{1,2}[./-] ?[0-9]{2}( .*)?$';
const OTHER_YEAR = '^(1[345][0-9]{2}|2[456][0-9]{2})[./-]|[./-](1[345][0-9]{2}|2[456][0-9]{2})( .*)?$';

/** Why a date cannot be read, or is of another calendar: a year of two digits, a Buddhist, Persian or Islamic year. */
const dateFindings = ({ name }: Column): readonly string[] => {
  const unreadable = `${name} IS NOT NULL AND v_${name} IS NULL`;
  const reads = (pattern: string): string => `REGEXP_MATCHES(${name}, '${pattern}')`;
  const code = `CASE WHEN ${reads(SHORT_YEAR)} THEN 'short_year' WHEN ${reads(OTHER_YEAR)} THEN 'other_calendar' ELSE 'unreadable_date' END`;
  const said = `{'kind': 'refused', 'code': ${code}, 'column_name': '${name}', 'cell': ${name}}`;
  return [
    `CASE WHEN ${unreadable} THEN ${said} END`,
    finding(`EXTRACT(YEAR FROM v_${name}) BETWEEN 2400 AND 2699`, 'refused', 'other_calendar', name),
  ];
};

const columnFindings = (column: Column, kept: KeptCodes): readonly string[] => {
  if (column.type === 'text') return [];
  if (column.type === 'date') return dateFindings(column);
  const unreadable = `${column.name} IS NOT NULL AND v_${column.name} IS NULL`;
  return [
    column.lenient === true
      ? finding(unreadable, 'warning', 'unknown_word', column.name)
      : finding(unreadable, 'refused', `unreadable_${column.type}`, column.name),
    ...limitFindings(column),
    ...codeFindings(column, kept),
  ];
};

const NO_CLIENT = finding('client_id IS NULL', 'refused', 'no_client', 'client_id');

/** A visit before this day is asked about, for a birth date may stand in its place (common practice, no source). */
const EARLIEST_VISIT = '1990-01-01';
/** As a spreadsheet shortens the months' names in ids that it took for dates. */
const MONTHS = 'jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec';

const VISIT_FINDINGS: readonly string[] = [
  NO_CLIENT,
  finding('visit_date IS NULL', 'refused', 'no_date', 'visit_date'),
  finding(
    'v_visit_date > imported_on AND EXTRACT(YEAR FROM v_visit_date) < 2400',
    'refused',
    'after_import',
    'visit_date',
  ),
  finding(
    `v_visit_date = v_birth_date OR (v_visit_date < DATE '${EARLIEST_VISIT}' AND NOT COALESCE(v_visit_date < v_birth_date, FALSE))`,
    'question',
    'early_visit',
    'visit_date',
  ),
  finding(
    `LOWER(client_id) IN (${SUMMARY_WORDS.map((word) => `'${word}'`).join(', ')})`,
    'question',
    'summary_row',
    'client_id',
  ),
  finding(
    `CONTAINS(client_id, '+') AND REGEXP_MATCHES(client_id, '^[0-9]([.,][0-9]+)?[eE][+][0-9]{2,3}$')`,
    'question',
    'id_as_number',
    'client_id',
  ),
  finding(
    `CONTAINS(client_id, '-') AND REGEXP_MATCHES(LOWER(client_id), '^([0-9]{1,2}-(${MONTHS})|(${MONTHS})-[0-9]{2})$|^[0-9]{4}-[0-9]{2}-[0-9]{2}$')`,
    'warning',
    'id_like_date',
    'client_id',
  ),
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

const ENROLMENT_FINDINGS: readonly string[] = [
  NO_CLIENT,
  finding('program IS NULL', 'refused', 'no_program', 'program'),
  finding('v_program_end < v_program_start', 'refused', 'end_before_start', 'program_end'),
];

/**
 * The text that judges every row of `<prefix>chunk` in one pass: `<prefix>found` gets one row for every cell with
 * something to say. Only `try_cast` touches a cell.
 *
 * @param kept codes that a person called numbers like any other: they raise no question again
 */
export const verdictStatement = (prefix: string, role: 'visits' | 'enrolment', kept: KeptCodes = new Map()): string => {
  const typed = COLUMNS.map((column) => `${typedExpression(column, 'c.')} AS v_${column.name}`).join(', ');
  const [ofRow, columns] = role === 'visits' ? [VISIT_FINDINGS, COLUMNS] : [ENROLMENT_FINDINGS, ENROLMENT_COLUMNS];
  const findings = [...ofRow, ...columns.flatMap((column) => columnFindings(column, kept))].join(',\n');
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
