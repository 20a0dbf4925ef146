import type { IsoDate } from '../core/iso-date';
import type { Row } from '../engine/types';
import { guardMask } from '../measures/guard';
import { doubleLiteral } from '../measures/compile-sql';
import { outsideConditions, outsidePath } from './sql/outside-equation-sql';
import type { CohortModel } from './model';
import type { Ask } from './question';
import type { ClientListRow, IndexPoint } from './types/cohort-summary';
import type { CohortFilter } from './types/filter';

const FILTERED = `(f.program IS NULL OR e.program = f.program) AND (f.site IS NULL OR v.site = f.site)
  AND (f.sex IS NULL OR v.sex = f.sex) AND (f.age_from IS NULL OR v.completed_age >= f.age_from)
  AND (f.age_to IS NULL OR v.completed_age <= f.age_to)`;

const clientsQuery = `WITH current_enrolment AS (
  SELECT e.client_key, e.enrolment_no, e.program, ROW_NUMBER() OVER (
    PARTITION BY e.client_key ORDER BY e.active DESC, e.program_start DESC NULLS LAST, e.enrolment_no) AS place
  FROM enrolments AS e
),
counted AS (
  SELECT client_key, COUNT(*) AS visits, MAX(visit_no) AS latest_no FROM visits GROUP BY client_key
)
SELECT c.client_key, c.client_id, c.family_name, c.given_name, c.sex, v.completed_age, e.program, v.site, n.visits, v.visit_date
FROM clients AS c
JOIN counted AS n ON n.client_key = c.client_key
JOIN visits AS v ON v.client_key = c.client_key AND v.visit_no = n.latest_no
JOIN current_enrolment AS e ON e.client_key = c.client_key AND e.place = 1
CROSS JOIN filter AS f
WHERE ${FILTERED}
ORDER BY c.client_id`;

const indicesQuery = ({ catalogue, guards }: CohortModel): string => {
  const ffmi = catalogue.measure('ffmi');
  const { stop, hold } = guards(ffmi);
  const outside = ffmi.equation === undefined ? [] : outsideConditions(ffmi.equation, 'v');
  const held = [
    `v.bmi < ${doubleLiteral(16)} OR v.bmi > ${doubleLiteral(34)}`,
    ...outside.filter(({ code }) => hold.includes(code)).map(({ when }) => when),
  ].join(' OR ');
  return `SELECT c.client_key, c.client_id, e.program, v.sex, v.visit_date, v.ffmi, v.fmi,
  CASE WHEN ${held} THEN 1 ELSE 0 END AS held
FROM enrolment_latest AS e
JOIN visits AS v ON v.client_key = e.client_key AND v.visit_no = e.latest_index
JOIN clients AS c ON c.client_key = e.client_key
CROSS JOIN filter AS f
WHERE v.guards & ${String(guardMask(stop))} = 0 AND NOT (${outsidePath(ffmi, 'v')}) AND ${FILTERED}
ORDER BY e.program, c.client_id`;
};

const text = (row: Row, name: string): string | null => (row[name] === null ? null : String(row[name]));

/** All clients under the filter, by id. */
export const clientListOf = async (
  ask: Ask,
  filter: CohortFilter,
  signal?: AbortSignal,
): Promise<readonly ClientListRow[]> =>
  (await ask(clientsQuery, filter, { signal })).map((row) => ({
    clientKey: Number(row['client_key']),
    client: String(row['client_id']),
    familyName: text(row, 'family_name'),
    givenName: text(row, 'given_name'),
    sex: row['sex'] as 'F' | 'M' | null,
    age: row['completed_age'] === null ? null : Number(row['completed_age']),
    program: String(row['program']),
    site: row['site'] === '' ? null : text(row, 'site'),
    visits: Number(row['visits']),
    latest: String(row['visit_date']) as IsoDate,
  }));

/** FFMI and FMI of every enrolment's latest visit that holds them and that no guard stops. */
export const indicesOf = async (
  ask: Ask,
  model: CohortModel,
  filter: CohortFilter,
  signal?: AbortSignal,
): Promise<readonly IndexPoint[]> =>
  (await ask(indicesQuery(model), filter, { signal })).map((row) => ({
    clientKey: Number(row['client_key']),
    client: String(row['client_id']),
    program: String(row['program']),
    sex: row['sex'] as 'F' | 'M',
    date: String(row['visit_date']) as IsoDate,
    ffmi: Number(row['ffmi']),
    fmi: Number(row['fmi']),
    held: row['held'] === 1,
  }));
