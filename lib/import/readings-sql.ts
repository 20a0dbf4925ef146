import type { Column } from './column';
import { COLUMNS } from './columns';

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

const decimals = (column: string): string =>
  `SELECT '${column}' AS column_name, MAX(CASE WHEN POSITION('.' IN t.${column}) > 0
  THEN LENGTH(t.${column}) - POSITION('.' IN t.${column}) ELSE 0 END) AS decimals
FROM typed AS t JOIN status AS s ON s.file_no = t.file_no AND s.line_no = t.line_no
WHERE s.status = 'accepted' AND t.${column} IS NOT NULL`;

/**
 * Texts that make `readings` (accepted rows, typed, one person under one id) and `column_resolution` from a judged
 * import without prefix.
 */
export const readingsStatements = (): readonly string[] => {
  const columns = COLUMNS.map((column) => {
    if (column.name === 'client_id') return 'COALESCE(a.client, t.client_id) AS client_id';
    const fallback = DEFAULTS[column.name];
    return fallback === undefined
      ? `t.v_${column.name} AS ${column.name}`
      : `COALESCE(t.v_${column.name}, ${fallback}) AS ${column.name}`;
  }).join(',\n  ');
  return [
    `CREATE OR REPLACE TABLE readings AS
WITH accepted AS (
  SELECT t.file_no, t.line_no, ${columns}
  FROM typed AS t
  JOIN status AS s ON s.file_no = t.file_no AND s.line_no = t.line_no AND s.status = 'accepted'
  LEFT JOIN aliases AS a ON a.id = t.client_id
)
SELECT CAST(ROW_NUMBER() OVER (ORDER BY file_no, line_no) AS INTEGER) AS reading_key,
  CAST(DENSE_RANK() OVER (ORDER BY client_id) AS INTEGER) AS client_key, *
FROM accepted ORDER BY file_no, line_no`,
    `CREATE OR REPLACE TABLE column_resolution AS ${RESOLUTION_COLUMNS.map(decimals).join(' UNION ALL ')}`,
  ];
};
