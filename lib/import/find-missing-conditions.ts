import { parseIsoDate, type IsoDate } from '../core/iso-date';
import type { Engine } from '../engine/types';
import { CONDITION_COLUMNS } from './columns';
import type { ImportAnswers } from './import-input';
import type { MissingConditions } from './plan';

/** A month of a site as the pipeline sees it: a condition is recorded there when any reading of the month holds it. */
const monthsQuery = (
  prefix: string,
): string => `SELECT site, EXTRACT(YEAR FROM visit_date) * 12 + EXTRACT(MONTH FROM visit_date) AS calendar_month,
  CAST(MIN(visit_date) AS VARCHAR) AS from_date, CAST(MAX(visit_date) AS VARCHAR) AS to_date,
  COUNT(DISTINCT CONCAT(client, CHR(31), visit_date)) AS visits,
  ${CONDITION_COLUMNS.map((name) => `COUNT(${name}) AS ${name}`).join(', ')}
FROM ${prefix}accepted WHERE is_enrolment = 0
GROUP BY site, EXTRACT(YEAR FROM visit_date) * 12 + EXTRACT(MONTH FROM visit_date)
ORDER BY site NULLS FIRST, calendar_month`;

const covers = (
  procedure: ImportAnswers['procedures'][number],
  site: string | null,
  from: string,
  to: string,
): boolean =>
  (procedure.site === null || procedure.site === (site ?? '')) &&
  (procedure.from === null || procedure.from <= from) &&
  (procedure.to === null || procedure.to >= to);

const date = (value: unknown): IsoDate => {
  const parsed = parseIsoDate(String(value));
  if (parsed === undefined) throw new Error('the engine gave no date');
  return parsed;
};

/**
 * Conditions that no row of a site records over a run of months and that no written procedure stands for yet. A site
 * for which it was answered that there is none is not asked again.
 */
export const findMissingConditions = async (
  engine: Engine,
  prefix: string,
  answers: ImportAnswers,
  signal?: AbortSignal,
): Promise<readonly MissingConditions[]> => {
  const runs: MissingConditions[] = [];
  let unbroken = false;
  for (const row of await engine.query(monthsQuery(prefix), signal)) {
    const site = row['site'] === null ? null : String(row['site']);
    const [from, to] = [date(row['from_date']), date(row['to_date'])];
    const declared = new Set(
      answers.procedures.flatMap((procedure) => (covers(procedure, site, from, to) ? procedure.columns : [])),
    );
    const columns = CONDITION_COLUMNS.filter((name) => Number(row[name]) === 0 && !declared.has(name));
    const asked = columns.length > 0 && !answers.withoutProcedure.includes(site);
    const last = unbroken ? runs.at(-1) : undefined;
    unbroken = asked;
    if (!asked) continue;
    if (last !== undefined && last.site === site && last.columns.join() === columns.join()) {
      runs[runs.length - 1] = { ...last, to, visits: last.visits + Number(row['visits']) };
    } else runs.push({ site, from, to, visits: Number(row['visits']), columns });
  }
  return runs;
};
