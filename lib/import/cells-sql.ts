import { COLUMNS, COLUMN_BY_NAME, EXPORTED_COLUMNS, VALUE_COLUMNS } from './columns';
import { typedExpression } from './typed-expression';

/** What stands beside the canonical columns in a chunk, all as text. */
export const CHUNK_COLUMNS: readonly string[] = [
  'file_no',
  'line_no',
  'part_no',
  'trouble',
  'set_aside',
  'corrected',
  'extra',
  ...COLUMNS.map((column) => column.name),
];

const typed = (name: string): string => {
  const column = COLUMN_BY_NAME.get(name);
  if (column === undefined) throw new Error(`there is no column ${name}`);
  return typedExpression(column, 'c.');
};

const numbers = (names: readonly string[]): string => names.map(typed).join(', ');

const WITHOUT_R = ['weight_kg', ...EXPORTED_COLUMNS];
const OTHER_VALUES = VALUE_COLUMNS.filter((name) => !['r_ohm', 'xc_ohm', ...WITHOUT_R].includes(name));

/** Hash of the figures by which one reading is told from another: R, Xc and weight; without R weight and the exported ones. */
const FIGURES = `CASE WHEN ${typed('r_ohm')} IS NOT NULL THEN HASH(1, ${numbers(['r_ohm', 'xc_ohm', 'weight_kg'])})
  WHEN COALESCE(${numbers(WITHOUT_R)}) IS NOT NULL THEN HASH(2, ${numbers(WITHOUT_R)})
  WHEN COALESCE(${numbers(OTHER_VALUES)}) IS NOT NULL THEN HASH(3, ${numbers(OTHER_VALUES)}) END`;

const PLACE = `COALESCE(a.client, c.client_id), ${typed('visit_date')}, COALESCE(${typed('visit_purpose')}, 'routine'),
  COALESCE(c.device_id, ''), COALESCE(${typed('frequency_khz')}, 50E0), COALESCE(${typed('side')}, 'right'), ${typed('reading')}`;

const WHOLE = `c.trouble IS NULL AND f.is_enrolment = 0 AND c.client_id IS NOT NULL AND ${typed('visit_date')} IS NOT NULL`;

const SAME_READING = `CASE WHEN ${WHOLE} AND ${FIGURES} IS NOT NULL THEN HASH(${PLACE}, ${FIGURES}) END`;
const SAME_NUMBER = `CASE WHEN ${WHOLE} AND ${typed('reading')} IS NOT NULL AND ${FIGURES} IS NOT NULL
  THEN HASH(${PLACE}, ${typed('visit_time')}, ${typed('r_ohm')} IS NOT NULL) END`;

const trimmed = COLUMNS.map(({ name }) => `NULLIF(TRIM(${name}), '') AS ${name}`).join(', ');
const every = COLUMNS.map(({ name }) => `c.${name}`).join(', ');

/**
 * Texts that make `<prefix>chunk` of the rows just read: cells trimmed, with a hash of the whole row and of the reading
 * that it is, both as the file has them; a row that cannot be read is known by its file and place.
 */
export const chunkStatement = (prefix: string): string => `CREATE OR REPLACE TABLE ${prefix}chunk AS
WITH cells AS (
  SELECT CAST(file_no AS INTEGER) AS file_no, CAST(line_no AS INTEGER) AS line_no, CAST(part_no AS INTEGER) AS part_no,
    trouble, CASE WHEN set_aside = '1' THEN 1 ELSE 0 END AS set_aside, CASE WHEN corrected = '1' THEN 1 ELSE 0 END AS corrected,
    COALESCE(extra, '') AS extra, ${trimmed}
  FROM ${prefix}loaded
)
SELECT c.*, CASE WHEN c.trouble IS NULL
    THEN HASH(${every}, c.extra, f.is_enrolment, CASE WHEN TRANSLATE(c.extra, CHR(31), '') <> '' THEN f.unknown_columns END)
    ELSE HASH(f.sha256, f.table_name, c.line_no, c.part_no) END AS row_hash,
  ${SAME_READING} AS origin_key
FROM cells AS c
JOIN ${prefix}files AS f ON f.file_no = c.file_no
LEFT JOIN ${prefix}aliases AS a ON a.id = c.client_id`;

/** Appends the chunk, its corrections made, to `<prefix>cells`, with the keys by which readings are found to be one. */
export const appendStatement = (prefix: string): string => `INSERT INTO ${prefix}cells
SELECT c.*, ${SAME_READING} AS same_key, ${SAME_NUMBER} AS number_key, ${FIGURES} AS figures_key
FROM ${prefix}chunk AS c
JOIN ${prefix}files AS f ON f.file_no = c.file_no
LEFT JOIN ${prefix}aliases AS a ON a.id = c.client_id`;

const CELLS_COLUMNS: readonly string[] = [
  'file_no INTEGER',
  'line_no INTEGER',
  'part_no INTEGER',
  'trouble VARCHAR',
  'set_aside INTEGER',
  'corrected INTEGER',
  'extra VARCHAR',
  ...COLUMNS.map(({ name }) => `${name} VARCHAR`),
  ...['row_hash', 'origin_key', 'same_key', 'number_key', 'figures_key'].map((name) => `${name} UBIGINT`),
];

/**
 * Empty tables for a judgement. `<prefix>cells` holds every row as text, once; `<prefix>typed` reads its cells as their
 * types, as `v_<column>`, whenever it is asked, so that nothing is kept twice.
 */
export const emptyTables = (prefix: string): readonly string[] => [
  `CREATE OR REPLACE TABLE ${prefix}files (file_no INTEGER, sha256 TEXT, table_name TEXT, unknown_columns TEXT, is_enrolment INTEGER, imported_on DATE)`,
  `CREATE OR REPLACE TABLE ${prefix}aliases (id TEXT, client TEXT)`,
  `CREATE OR REPLACE TABLE ${prefix}answers (client TEXT, visit_date TEXT, column_name TEXT, cell TEXT, decision TEXT)`,
  `CREATE OR REPLACE TABLE ${prefix}reading_answers (client TEXT, visit_date TEXT, question_key TEXT, decision TEXT)`,
  `CREATE OR REPLACE TABLE ${prefix}corrections (file_no INTEGER, line_no INTEGER, part_no INTEGER, column_name TEXT, cell TEXT)`,
  `CREATE OR REPLACE TABLE ${prefix}erased (id TEXT)`,
  `CREATE OR REPLACE TABLE ${prefix}judging (accept_questions INTEGER)`,
  `CREATE OR REPLACE TABLE ${prefix}cells (${CELLS_COLUMNS.join(', ')})`,
  `CREATE OR REPLACE TABLE ${prefix}found (file_no INTEGER, line_no INTEGER, part_no INTEGER, client_id TEXT, visit_date TEXT,
  kind TEXT, code TEXT, column_name TEXT, cell TEXT, became TEXT)`,
  `CREATE OR REPLACE VIEW ${prefix}typed AS
SELECT c.*, ${COLUMNS.map((column) => `${typedExpression(column, 'c.')} AS v_${column.name}`).join(', ')}
FROM ${prefix}cells AS c`,
];
