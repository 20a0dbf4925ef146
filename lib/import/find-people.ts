import type { Engine, Row } from '../engine/types';
import type { ImportAnswers } from './import-input';
import type { PersonQuestion } from './plan';

/** Questions of each kind that a person may be shown. */
const ASKED = 500;

/** A measured height further than this from the client's median is a question, cm (common practice, no source). */
const HEIGHT_LIMIT_CM = 1.5;

const accepted = (prefix: string): string => `accepted AS (
  SELECT t.*, COALESCE(a.client, t.client_id) AS client, f.is_enrolment, s.order_no
  FROM ${prefix}typed AS t
  JOIN ${prefix}status AS s ON s.file_no = t.file_no AND s.line_no = t.line_no AND s.part_no = t.part_no AND s.status = 'accepted'
  JOIN ${prefix}files AS f ON f.file_no = t.file_no
  LEFT JOIN ${prefix}aliases AS a ON a.id = t.client_id
)`;

/** Ids that are one id when case, spaces, signs and leading zeros are left out. */
const spellingQuery = (prefix: string): string => `WITH ${accepted(prefix)},
ids AS (
  SELECT client, COUNT(DISTINCT v_visit_date) AS visits,
    REGEXP_REPLACE(REGEXP_REPLACE(LOWER(client), '[\\s_./-]+', '', 'g'), '(^|[^0-9])0+([0-9])', '\\1\\2', 'g') AS folded
  FROM accepted GROUP BY client
),
grouped AS (SELECT ids.*, COUNT(*) OVER (PARTITION BY folded) AS spellings FROM ids)
SELECT folded AS together, client, visits FROM grouped WHERE spellings > 1 ORDER BY folded, client`;

const nameQuery = (prefix: string): string => `WITH ${accepted(prefix)},
people AS (
  SELECT DISTINCT LOWER(family_name) AS family, LOWER(given_name) AS given, v_birth_date, client FROM accepted
  WHERE family_name IS NOT NULL AND given_name IS NOT NULL AND v_birth_date IS NOT NULL
),
grouped AS (SELECT people.*, COUNT(*) OVER (PARTITION BY family, given, v_birth_date) AS ids FROM people),
counted AS (SELECT client, COUNT(DISTINCT v_visit_date) AS visits FROM accepted GROUP BY client)
SELECT CONCAT(g.family, CHR(31), g.given, CHR(31), CAST(g.v_birth_date AS VARCHAR)) AS together, g.client, c.visits
FROM grouped AS g JOIN counted AS c ON c.client = g.client WHERE g.ids > 1 ORDER BY together, g.client`;

/** Clients with more than one value of something that a person has one of. */
const severalQuery = (prefix: string, value: string): string => `WITH ${accepted(prefix)},
valued AS (
  SELECT client, ${value} AS value, COUNT(DISTINCT v_visit_date) AS visits, MIN(order_no) AS first_row
  FROM accepted WHERE ${value} IS NOT NULL GROUP BY client, ${value}
),
grouped AS (SELECT valued.*, COUNT(*) OVER (PARTITION BY client) AS answers FROM valued)
SELECT client, value, visits FROM grouped WHERE answers > 1 ORDER BY client, visits DESC, first_row`;

const CODING = "COALESCE(v_sex_for_equations, CASE WHEN v_sex IN ('F', 'M') THEN v_sex END)";

const ADULT = `COALESCE(DATE_DIFF('day', v_birth_date, v_visit_date) / 365.25E0,
  EXTRACT(YEAR FROM v_visit_date) - v_birth_year - 1, v_age_years, 18) >= 18`;

const heightsQuery = (prefix: string): string => `WITH ${accepted(prefix)},
measured AS (
  SELECT client, v_visit_date, v_height_cm, ROW_NUMBER() OVER (PARTITION BY client, v_visit_date, v_visit_purpose ORDER BY order_no) AS place
  FROM accepted
  WHERE v_height_cm IS NOT NULL AND COALESCE(v_height_source, 'measured') = 'measured' AND ${ADULT}
),
medians AS (SELECT client, MEDIAN(v_height_cm) AS median_cm FROM measured WHERE place = 1 GROUP BY client),
asked AS (
  SELECT DISTINCT d.client, d.median_cm FROM medians AS d JOIN measured AS h ON h.client = d.client
  WHERE h.place = 1 AND ABS(h.v_height_cm - d.median_cm) > ${String(HEIGHT_LIMIT_CM)} + 1E-9
)
SELECT a.client, a.median_cm, h.v_height_cm AS cm, COUNT(*) AS visits, CAST(MIN(h.v_visit_date) AS VARCHAR) AS first_date
FROM asked AS a JOIN measured AS h ON h.client = a.client AND h.place = 1
GROUP BY a.client, a.median_cm, h.v_height_cm ORDER BY a.client, MIN(h.v_visit_date), h.v_height_cm`;

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
  const births = open(await ask(severalQuery(prefix, 'v_birth_date')), answers.birthDates);
  const sexes = open(await ask(severalQuery(prefix, CODING)), answers.sexes);
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
