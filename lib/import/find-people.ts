import type { Engine, Row } from '../engine/types';
import type { ImportAnswers } from './import-input';
import type { PersonQuestion } from './plan';

/** Questions of each kind that a person may be shown. */
const ASKED = 500;

/** A measured height further than this from the client's median is a question, cm (common practice, no source). */
const HEIGHT_LIMIT_CM = 1.5;

/** Ids that are one id when case, spaces, signs and leading zeros are left out. */
const spellingQuery = (prefix: string): string => `WITH ids AS (
  SELECT client, COUNT(DISTINCT visit_date) AS visits,
    REGEXP_REPLACE(REGEXP_REPLACE(REGEXP_REPLACE(LOWER(client), '^([0-9]+)[.]0+$', '\\1'), '[\\s_./\u2010-\u2015-]+', '', 'g'), '(^|[^0-9])0+([0-9])', '\\1\\2', 'g') AS folded
  FROM ${prefix}accepted GROUP BY client
),
grouped AS (SELECT ids.*, COUNT(*) OVER (PARTITION BY folded) AS spellings FROM ids)
SELECT folded AS together, client, visits FROM grouped WHERE spellings > 1 ORDER BY folded, client`;

const nameQuery = (prefix: string): string => `WITH people AS (
  SELECT DISTINCT family, given, birth_date, client FROM ${prefix}accepted
  WHERE family IS NOT NULL AND given IS NOT NULL AND birth_date IS NOT NULL
),
grouped AS (SELECT people.*, COUNT(*) OVER (PARTITION BY family, given, birth_date) AS ids FROM people),
counted AS (SELECT client, COUNT(DISTINCT visit_date) AS visits FROM ${prefix}accepted GROUP BY client)
SELECT CONCAT(g.family, CHR(31), g.given, CHR(31), CAST(g.birth_date AS VARCHAR)) AS together, g.client, c.visits
FROM grouped AS g JOIN counted AS c ON c.client = g.client WHERE g.ids > 1 ORDER BY together, g.client`;

/** Clients with more than one value of something that a person has one of. */
const severalQuery = (prefix: string, value: 'birth_date' | 'coding'): string => `WITH valued AS (
  SELECT client, ${value} AS value, COUNT(DISTINCT visit_date) AS visits, MIN(order_no) AS first_row
  FROM ${prefix}accepted WHERE ${value} IS NOT NULL GROUP BY client, ${value}
),
grouped AS (SELECT valued.*, COUNT(*) OVER (PARTITION BY client) AS answers FROM valued)
SELECT client, value, visits FROM grouped WHERE answers > 1 ORDER BY client, visits DESC, first_row`;

const ADULT = `COALESCE(DATE_DIFF('day', birth_date, visit_date) / 365.25E0,
  EXTRACT(YEAR FROM visit_date) - birth_year - 1, age_years, 18) >= 18`;

const heightsQuery = (prefix: string): string => `WITH measured AS (
  SELECT client, visit_date, measured_cm,
    ROW_NUMBER() OVER (PARTITION BY client, visit_date, visit_purpose ORDER BY order_no) AS place
  FROM ${prefix}accepted WHERE measured_cm IS NOT NULL AND visit_date IS NOT NULL AND ${ADULT}
),
medians AS (SELECT client, MEDIAN(measured_cm) AS median_cm FROM measured WHERE place = 1 GROUP BY client),
asked AS (
  SELECT DISTINCT d.client, d.median_cm FROM medians AS d JOIN measured AS h ON h.client = d.client
  WHERE h.place = 1 AND ABS(h.measured_cm - d.median_cm) > ${String(HEIGHT_LIMIT_CM)} + 1E-9
)
SELECT a.client, a.median_cm, h.measured_cm AS cm, COUNT(*) AS visits, CAST(MIN(h.visit_date) AS VARCHAR) AS first_date
FROM asked AS a JOIN measured AS h ON h.client = a.client AND h.place = 1
GROUP BY a.client, a.median_cm, h.measured_cm ORDER BY a.client, MIN(h.visit_date), h.measured_cm`;

const grouped = (rows: readonly Row[], column: string): readonly (readonly Row[])[] => {
  const groups = new Map<string, Row[]>();
  for (const row of rows) {
    const key = String(row[column]);
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [row]);
    else group.push(row);
  }
  return [...groups.values()].slice(0, ASKED);
};

const visits = (row: Row): number => Number(row['visits']);
const clientOf = (group: readonly Row[]): string => String(group[0]?.['client']);

const similarIds = (
  rows: readonly Row[],
  why: 'spelling' | 'name-and-birth',
  different: readonly (readonly string[])[],
): readonly PersonQuestion[] =>
  grouped(rows, 'together').flatMap((group) => {
    const ids = group.map((row) => ({ id: String(row['client']), visits: visits(row) }));
    const answered = different.some((known) => ids.every(({ id }) => known.includes(id)));
    return answered ? [] : [{ kind: 'similar-ids' as const, ids, why }];
  });

/** What only a person can say about somebody, unless it was answered. */
export const findPeople = async (
  engine: Engine,
  prefix: string,
  answers: ImportAnswers,
  signal?: AbortSignal,
): Promise<readonly PersonQuestion[]> => {
  const ask = (sql: string): Promise<readonly Row[]> => engine.query(sql, signal);
  const spelled = similarIds(await ask(spellingQuery(prefix)), 'spelling', answers.differentClients);
  const named = similarIds(await ask(nameQuery(prefix)), 'name-and-birth', answers.differentClients).filter(
    (question) =>
      question.kind === 'similar-ids' &&
      !spelled.some(
        (other) =>
          other.kind === 'similar-ids' && question.ids.every(({ id }) => other.ids.some((known) => known.id === id)),
      ),
  );
  const open = (rows: readonly Row[], answered: readonly string[]): readonly (readonly Row[])[] =>
    grouped(
      rows.filter((row) => !answered.includes(String(row['client']))),
      'client',
    );
  const births = open(await ask(severalQuery(prefix, 'birth_date')), answers.birthDates);
  const sexes = open(await ask(severalQuery(prefix, 'coding')), answers.sexes);
  const heights = open(await ask(heightsQuery(prefix)), answers.heights);
  return [
    ...spelled,
    ...named,
    ...births.map((group) => ({
      kind: 'birth-dates' as const,
      client: clientOf(group),
      dates: group.map((row) => ({ date: String(row['value']), visits: visits(row) })),
    })),
    ...sexes.map((group) => ({
      kind: 'sexes' as const,
      client: clientOf(group),
      sexes: group.map((row) => ({ sex: String(row['value']), visits: visits(row) })),
    })),
    ...heights.map((group) => ({
      kind: 'heights' as const,
      client: clientOf(group),
      medianCm: Number(group[0]?.['median_cm']),
      heights: group.map((row) => ({
        cm: Number(row['cm']),
        visits: visits(row),
        firstDate: String(row['first_date']),
      })),
    })),
  ];
};
