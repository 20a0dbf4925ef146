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

/** Hash of who was measured when, for what, on which device, at which frequency and side, and as which reading. */
const PLACE = `CASE WHEN c.trouble IS NULL AND f.is_enrolment = 0 AND c.client_id IS NOT NULL AND ${typed('visit_date')} IS NOT NULL
  THEN HASH(COALESCE(a.client, c.client_id), c.visit_date, COALESCE(${typed('visit_purpose')}, 'routine'), COALESCE(c.device_id, ''),
    COALESCE(${typed('frequency_khz')}, 50E0), COALESCE(${typed('side')}, 'right'), ${typed('reading')}) END`;

/** The rows of a table with the hashes of their figures and their place. */
const keyed = (source: string, prefix: string): string => `keyed AS (
  SELECT c.*, ${FIGURES} AS figures_key, ${PLACE} AS place_key, ${typed('reading')} AS v_reading, ${typed('visit_time')} AS v_visit_time,
    ${typed('r_ohm')} IS NOT NULL AS has_r, f.sha256, f.table_name, f.is_enrolment, f.unknown_columns
  FROM ${source} AS c
  JOIN ${prefix}files AS f ON f.file_no = c.file_no
  LEFT JOIN ${prefix}aliases AS a ON a.id = c.client_id
)`;

const SAME_READING =
  'CASE WHEN place_key IS NOT NULL AND figures_key IS NOT NULL THEN HASH(place_key, figures_key) END';
const SAME_NUMBER = `CASE WHEN place_key IS NOT NULL AND figures_key IS NOT NULL AND v_reading IS NOT NULL
  THEN HASH(place_key, v_visit_time, has_r) END`;

const trimmed = COLUMNS.map(({ name }) => `NULLIF(TRIM(${name}), '') AS ${name}`).join(', ');
const every = COLUMNS.map(({ name }) => name).join(', ');
const BESIDE = 'file_no, line_no, part_no, trouble, set_aside, corrected, extra';

/**
 * Text that makes `<prefix>chunk` of the rows just read: cells trimmed, with a hash of the whole row and of the reading
 * that it is, both as the file has them; a row that cannot be read is known by its file and place.
 */
export const chunkStatement = (prefix: string): string => `CREATE OR REPLACE TABLE ${prefix}chunk AS
WITH trimmed AS (
  SELECT CAST(file_no AS INTEGER) AS file_no, CAST(line_no AS INTEGER) AS line_no, CAST(part_no AS INTEGER) AS part_no,
    trouble, CASE WHEN set_aside = '1' THEN 1 ELSE 0 END AS set_aside, CASE WHEN corrected = '1' THEN 1 ELSE 0 END AS corrected,
    COALESCE(extra, '') AS extra, ${trimmed}
  FROM ${prefix}loaded
),
${keyed('trimmed', prefix)}
SELECT ${BESIDE}, ${every}, CASE WHEN trouble IS NULL
    THEN HASH(${every}, extra, is_enrolment, CASE WHEN TRANSLATE(extra, CHR(31), '') <> '' THEN unknown_columns END)
    ELSE HASH(sha256, table_name, line_no, part_no) END AS row_hash, ${SAME_READING} AS origin_key
FROM keyed`;

/** Text that appends the chunk, its corrections made, to `<prefix>cells`, with the keys by which readings are found to be one. */
export const appendStatement = (prefix: string): string => `INSERT INTO ${prefix}cells
WITH ${keyed(`${prefix}chunk`, prefix)}
SELECT ${BESIDE}, ${every}, row_hash, origin_key, ${SAME_READING} AS same_key, ${SAME_NUMBER} AS number_key, figures_key
FROM keyed`;

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
  `CREATE OR REPLACE TABLE ${prefix}files (file_no INTEGER, source TEXT, file_name TEXT, sha256 TEXT, table_name TEXT, unknown_columns TEXT, is_enrolment INTEGER, imported_on DATE)`,
  `CREATE OR REPLACE TABLE ${prefix}aliases (id TEXT, client TEXT)`,
  `CREATE OR REPLACE TABLE ${prefix}answers (client TEXT, visit_date TEXT, column_name TEXT, cell TEXT, decision TEXT)`,
  `CREATE OR REPLACE TABLE ${prefix}reading_answers (client TEXT, visit_date TEXT, question_key TEXT, decision TEXT)`,
  `CREATE OR REPLACE TABLE ${prefix}corrections (file_no INTEGER, line_no INTEGER, part_no INTEGER, column_name TEXT, cell TEXT)`,
  `CREATE OR REPLACE TABLE ${prefix}erased (id TEXT)`,
  `CREATE OR REPLACE TABLE ${prefix}converted (file_no INTEGER, column_name TEXT, decimals DOUBLE)`,
  `CREATE OR REPLACE TABLE ${prefix}judging (accept_questions INTEGER)`,
  `CREATE OR REPLACE TABLE ${prefix}cells (${CELLS_COLUMNS.join(', ')})`,
  `CREATE OR REPLACE TABLE ${prefix}found (file_no INTEGER, line_no INTEGER, part_no INTEGER, client_id TEXT, visit_date TEXT,
  kind TEXT, code TEXT, column_name TEXT, cell TEXT, became TEXT)`,
  `CREATE OR REPLACE VIEW ${prefix}typed AS
SELECT c.*, ${COLUMNS.map((column) => `${typedExpression(column, 'c.')} AS v_${column.name}`).join(', ')}
FROM ${prefix}cells AS c`,
];
