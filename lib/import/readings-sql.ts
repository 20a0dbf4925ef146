import type { Column } from './column';
import { COLUMNS, ENROLMENT_COLUMNS } from './columns';

const SQL_TYPE: Readonly<Record<Column['type'], string>> = {
  text: 'TEXT',
  date: 'DATE',
  time: 'TEXT',
  integer: 'INTEGER',
  number: 'DOUBLE PRECISION',
  flag: 'INTEGER',
  choice: 'TEXT',
};

/** The typed readings' columns, as name and SQL type: what every engine of the pipeline starts from. */
export const READINGS_COLUMNS: readonly (readonly [string, string])[] = [
  ['reading_key', 'INTEGER'],
  ['client_key', 'INTEGER'],
  ['file_no', 'INTEGER'],
  ['line_no', 'INTEGER'],
  ...COLUMNS.map((column): readonly [string, string] => [column.name, SQL_TYPE[column.type]]),
];

/** Columns whose recorded decimals bound the error of measurement from below. */
export const RESOLUTION_COLUMNS = [
  'weight_kg',
  'r_ohm',
  'xc_ohm',
  'ffm_kg',
  'fm_kg',
  'smm_kg',
  'tbw_l',
  'ecw_l',
  'phase_angle_deg',
] as const;

const DEFAULTS: Readonly<Record<string, string>> = {
  visit_purpose: "'routine'",
  frequency_khz: '50E0',
  side: "'right'",
};

const AT = 's.file_no = t.file_no AND s.line_no = t.line_no AND s.part_no = t.part_no';

/**
 * Decimals of a column's cells, as they bound its resolution. Where cells were converted it is the step of the source in
 * the column's unit, as the decimals that a step of this size has (1 lb: 0.34).
 */
const decimals = (column: string): string =>
  `SELECT '${column}' AS column_name, MAX(CASE WHEN k.decimals IS NOT NULL THEN k.decimals
  WHEN POSITION('.' IN t.${column}) > 0 THEN LENGTH(t.${column}) - POSITION('.' IN t.${column}) ELSE 0 END) AS decimals
FROM cells AS t JOIN status AS s ON ${AT}
LEFT JOIN (SELECT file_no, MAX(decimals) AS decimals FROM converted WHERE column_name = '${column}' GROUP BY file_no) AS k
  ON k.file_no = t.file_no
WHERE s.status = 'accepted' AND t.${column} IS NOT NULL`;

/** What a client's enrolment states, as name and SQL type: beside the readings another table that every engine starts from. */
export const ENROLMENT_ROWS_COLUMNS: readonly (readonly [string, string])[] = [
  ['enrolment_row', 'INTEGER'],
  ['client_key', 'INTEGER'],
  ...ENROLMENT_COLUMNS.map((column): readonly [string, string] => [column.name, SQL_TYPE[column.type]]),
];

const accepted = (enrolment: 0 | 1): string => `FROM typed AS t
  JOIN status AS s ON ${AT} AND s.status = 'accepted'
  JOIN files AS f ON f.file_no = t.file_no AND f.is_enrolment = ${String(enrolment)}
  LEFT JOIN aliases AS a ON a.id = t.client_id`;

const typedColumn = ({ name }: Column): string => {
  if (name === 'client_id') return 'COALESCE(a.client, t.client_id) AS client_id';
  const fallback = DEFAULTS[name];
  return fallback === undefined ? `t.v_${name} AS ${name}` : `COALESCE(t.v_${name}, ${fallback}) AS ${name}`;
};

/**
 * Texts that make `readings` (accepted rows, typed, one person under one id), `enrolment_rows` (those of the enrolment
 * tables, for clients who were measured) and `column_resolution` from a judged import without prefix.
 */
export const readingsStatements = (): readonly string[] => [
  `CREATE OR REPLACE TABLE readings AS
WITH accepted AS (
  SELECT s.order_no, t.file_no, t.line_no, ${COLUMNS.map(typedColumn).join(',\n  ')}
  ${accepted(0)}
)
SELECT CAST(ROW_NUMBER() OVER (ORDER BY order_no) AS INTEGER) AS reading_key,
  CAST(DENSE_RANK() OVER (ORDER BY client_id) AS INTEGER) AS client_key, ${['file_no', 'line_no', ...COLUMNS.map(({ name }) => name)].join(', ')}
FROM accepted ORDER BY order_no`,
  `CREATE OR REPLACE TABLE enrolment_rows AS
WITH accepted AS (
  SELECT s.order_no, ${ENROLMENT_COLUMNS.map(typedColumn).join(', ')}
  ${accepted(1)}
),
measured AS (SELECT DISTINCT client_key, client_id FROM readings)
SELECT CAST(ROW_NUMBER() OVER (ORDER BY e.order_no) AS INTEGER) AS enrolment_row, m.client_key,
  ${ENROLMENT_COLUMNS.map(({ name }) => `e.${name}`).join(', ')}
FROM accepted AS e JOIN measured AS m ON m.client_id = e.client_id ORDER BY e.order_no`,
  `CREATE OR REPLACE TABLE column_resolution AS ${RESOLUTION_COLUMNS.map(decimals).join(' UNION ALL ')}`,
];
