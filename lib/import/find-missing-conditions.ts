import { parseIsoDate, type IsoDate } from '../core/iso-date';
import type { Engine, Row } from '../engine/types';
import { CONDITION_COLUMNS } from './columns';
import type { ImportAnswers } from './import-input';
import type { MissingConditions } from './plan';

/** Readings of a site's days, and how many of them hold each condition. */
const daysQuery = (prefix: string): string => `SELECT site, CAST(visit_date AS VARCHAR) AS day,
  COUNT(DISTINCT client) AS visits, ${CONDITION_COLUMNS.map((name) => `COUNT(${name}) AS ${name}`).join(', ')}
FROM ${prefix}accepted WHERE is_enrolment = 0
GROUP BY site, visit_date
ORDER BY site NULLS FIRST, visit_date`;

interface Period {
  readonly from: string | null;
  readonly to: string | null;
}

const holds = (period: Period, day: string): boolean =>
  (period.from === null || period.from <= day) && (period.to === null || period.to >= day);

const date = (value: unknown): IsoDate => {
  const parsed = parseIsoDate(String(value));
  if (parsed === undefined) throw new Error('the engine gave no date');
  return parsed;
};

const siteOf = (row: Row): string | null => (row['site'] === null ? null : String(row['site']));

/** A month of a site as the pipeline sees it: a condition is recorded there when any reading of the month holds it. */
const monthOf = (row: Row): string => JSON.stringify([siteOf(row), String(row['day']).slice(0, 7)]);

/**
 * Conditions that no row of a site records over a run of days, by calendar month. A written procedure that covers a day
 * answers for it: what it leaves out is listed as left out of it. Days for which it was answered that there is no
 * procedure are not listed.
 */
export const findMissingConditions = async (
  engine: Engine,
  prefix: string,
  answers: ImportAnswers,
  signal?: AbortSignal,
): Promise<readonly MissingConditions[]> => {
  const days = await engine.query(daysQuery(prefix), signal);
  const recorded = new Map<string, Set<string>>();
  for (const row of days) {
    const here = recorded.get(monthOf(row)) ?? new Set();
    for (const name of CONDITION_COLUMNS) if (Number(row[name]) > 0) here.add(name);
    recorded.set(monthOf(row), here);
  }
  const runs: MissingConditions[] = [];
  let unbroken = false;
  for (const row of days) {
    const site = siteOf(row);
    const day = date(row['day']);
    const covering = answers.procedures.flatMap((procedure, place) =>
      (procedure.site === null || procedure.site === (site ?? '')) && holds(procedure, day)
        ? [{ place, columns: procedure.columns }]
        : [],
    );
    const met = new Set(covering.flatMap((procedure) => procedure.columns));
    const declaredBy = covering.at(-1)?.place ?? null;
    const columns = CONDITION_COLUMNS.filter((name) => !recorded.get(monthOf(row))?.has(name) && !met.has(name));
    const denied = answers.withoutProcedure.some((answer) => answer.site === site && holds(answer, day));
    const listed = columns.length > 0 && !(declaredBy === null && denied);
    const last = unbroken ? runs.at(-1) : undefined;
    unbroken = listed;
    if (!listed) continue;
    const visits = Number(row['visits']);
    if (last?.site === site && last.declaredBy === declaredBy && last.columns.join() === columns.join()) {
      runs[runs.length - 1] = { ...last, to: day, visits: last.visits + visits };
    } else runs.push({ site, from: day, to: day, visits, columns, declaredBy });
  }
  return runs;
};
