interface Construct {
  readonly name: string;
  readonly pattern: RegExp;
  /** A text that holds it. */
  readonly example: string;
}

const word = (name: string, example: string): Construct => ({
  name,
  pattern: new RegExp(`\\b${name}\\b`, 'i'),
  example,
});
const call = (name: string): Construct => ({
  name: `${name}()`,
  pattern: new RegExp(`\\b${name}\\s*\\(`, 'i'),
  example: `SELECT ${name}(x) FROM t`,
});

const CALLS = [
  'ROUND',
  'ANY_VALUE',
  'AGE',
  'NOW',
  'VARIANCE',
  'STDDEV',
  'CORR',
  'ARG_MAX',
  'ARG_MIN',
  'MAX_BY',
  'MIN_BY',
  'LIST',
  'UNNEST',
  'REGEXP_MATCHES',
  'REGEXP_REPLACE',
  'TRY_CAST',
  'STRFTIME',
  'STRPTIME',
  'TO_CHAR',
  'DIV',
  'XOR',
  'MEDIAN',
  'QUANTILE',
  'QUANTILE_CONT',
  'FIRST',
  'LAST',
  'IFNULL',
  'IF',
  'STRING_AGG',
  'ARRAY_AGG',
  'BOOL_AND',
  'BOOL_OR',
  'DATE_DIFF',
  'DATEDIFF',
  'DATE_ADD',
  'DATE_TRUNC',
  'EPOCH',
  'WIDTH_BUCKET',
  'COUNT_IF',
  'POWER',
];

/** What DuckDB and PostgreSQL do not share, or answer differently. */
export const FORBIDDEN: readonly Construct[] = [
  ...CALLS.map(call),
  word('DISTINCT ON', 'SELECT DISTINCT ON (a) b FROM t'),
  word('QUALIFY', 'SELECT a FROM t QUALIFY ROW_NUMBER() OVER (ORDER BY a) = 1'),
  word('INTERVAL', 'SELECT d + INTERVAL 1 DAY FROM t'),
  word('CURRENT_DATE', 'SELECT CURRENT_DATE'),
  word('CURRENT_TIMESTAMP', 'SELECT CURRENT_TIMESTAMP'),
  word('SIMILAR TO', 'SELECT a SIMILAR TO b FROM t'),
  word('ILIKE', 'SELECT a ILIKE b FROM t'),
  word('ASOF', 'SELECT a FROM t ASOF JOIN u ON t.a = u.a'),
  word('BOOLEAN', 'SELECT CAST(a AS BOOLEAN) FROM t'),
  word('(DECIMAL|NUMERIC|REAL|FLOAT|HUGEINT|VARCHAR|TIMESTAMP)', 'SELECT CAST(a AS DECIMAL) FROM t'),
  word('(GROUP|ORDER) BY ALL', 'SELECT a FROM t ORDER BY ALL'),
  { name: 'statistics in one pass', pattern: /\b(VAR|STDDEV|COVAR|REGR)_\w+/i, example: 'SELECT VAR_SAMP(x) FROM t' },
  {
    name: 'DOUBLE without PRECISION',
    pattern: /\bDOUBLE\b(?! PRECISION)/i,
    example: 'SELECT CAST(a AS DOUBLE) FROM t',
  },
  { name: 'list or struct brackets', pattern: /[[\]{}]/, example: 'SELECT [1, 2]' },
  { name: 'quoted identifier', pattern: /"/, example: 'SELECT "Abc" FROM t' },
  {
    name: 'mixed-case identifier',
    pattern: /\b(?=\w*[a-z])(?=\w*[A-Z])[A-Za-z]\w*\b/,
    example: 'SELECT visitDate FROM t',
  },
  { name: 'short cast', pattern: /::/, example: 'SELECT a::DATE FROM t' },
  { name: 'whole-number division', pattern: /\/\//, example: 'SELECT a // b FROM t' },
  { name: 'power operator', pattern: /\*\*|\^/, example: 'SELECT a ** 2 FROM t' },
  { name: 'remainder', pattern: /%/, example: 'SELECT a % 2 FROM t' },
  { name: 'match operator', pattern: /[\w)]\s*!?~/, example: 'SELECT a ~ b FROM t' },
  { name: 'parameter', pattern: /\?|\$\d/, example: 'SELECT a FROM t WHERE b = $1' },
  { name: 'star with changes', pattern: /\*\s+(EXCLUDE|REPLACE|RENAME)\b/i, example: 'SELECT * EXCLUDE (a) FROM t' },
  { name: 'comment', pattern: /--|\/\*/, example: 'SELECT a -- why\nFROM t' },
  { name: 'several statements', pattern: /;/, example: 'SELECT a FROM t; DROP TABLE t' },
  {
    name: 'least or greatest of a comparison',
    pattern: /\b(MIN|MAX)\s*\((?!\s*CASE\b)[^()]*[<>=]/i,
    example: 'SELECT MAX(a > b) FROM t',
  },
  {
    name: 'division by what may be zero',
    pattern: /\/(?!\s*(NULLIF\s*\(|PI\s*\(\)|\d*[1-9]\d*))/i,
    example: 'SELECT CAST(a AS DOUBLE PRECISION) / b FROM t',
  },
  {
    name: 'constant divided by a count',
    pattern: /\d\s*\/\s*NULLIF\s*\(\s*(\w+\.)?k_\d+/i,
    example: 'SELECT 1E0 / NULLIF(a.k_0, 0) FROM t',
  },
  {
    name: 'decimal without exponent in a calculation',
    pattern: /[*+/-]\s*\(?\d+\.\d+(?![\dE.])|(?<![\d.])\d+\.\d+(?![\dE.])\s*[*+/-]/i,
    example: 'SELECT 0.518 * x FROM t',
  },
  {
    name: 'rounding cast',
    pattern: /\bCAST\((?!(COUNT|SUM|FLOOR|ROW_NUMBER|EXTRACT)\()[^()]*AS INTEGER\)/i,
    example: 'SELECT CAST(x AS INTEGER) FROM t',
  },
  {
    name: 'descending order without a place for NULL',
    pattern: /(?<!COUNT\([^()]*\)|\bn|\bactive|\bvisit_no)\s+DESC\b(?! NULLS LAST)/i,
    example: 'SELECT a FROM t ORDER BY program_start DESC',
  },
];

/** The texts between quotes. */
export const wordsIn = (sql: string): readonly string[] =>
  [...sql.matchAll(/'((?:[^']|'')*)'/g)].map((match) => match[1] ?? '');

/** The constructs of a text that are outside the shared subset; words between quotes are no constructs. */
export const forbiddenIn = (sql: string): readonly string[] => {
  const bare = sql.replaceAll(/'(?:[^']|'')*'/g, "''");
  return FORBIDDEN.filter(({ pattern }) => pattern.test(bare)).map(({ name }) => name);
};
