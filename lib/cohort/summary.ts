import type { IsoDate } from '../core/iso-date';
import type { Engine, Row } from '../engine/types';
import { DEFAULT_RULES } from '../measures/default-rules';
import type { CohortModel } from './model';
import { outsidePath } from './sql/outside-equation-sql';
import { isExported } from './is-exported';
import { masksFor, ruleBit } from './rules-in-force';
import type { Settings } from './settings';
import type { CohortSummary, ConditionCoverage } from './types/cohort-summary';
import type { ComparableSetting } from './types/filter';

const CONDITIONS = DEFAULT_RULES.filter((rule) => rule.procedure);

const coverageQuery = `SELECT ${CONDITIONS.map((rule) => {
  const bit = String(ruleBit(rule.id));
  const n = (column: string): string => `COUNT(*) FILTER (WHERE ${column} & ${bit} <> 0) AS ${column}_${rule.id}`;
  return ['recorded', 'by_procedure', 'unknown', 'not_recorded'].map(n).join(', ');
}).join(',\n  ')} FROM reading_values`;

const count = (row: Row | undefined, name: string): number => Number(row?.[name] ?? 0);

const coverageFrom = (row: Row | undefined): readonly ConditionCoverage[] =>
  CONDITIONS.map((rule) => ({
    rule: rule.id,
    recorded: count(row, `recorded_${rule.id}`),
    byProcedure: count(row, `by_procedure_${rule.id}`),
    unknown: count(row, `unknown_${rule.id}`),
    notRecorded: count(row, `not_recorded_${rule.id}`),
  }));

const postureOf = (row: Row | undefined): CohortSummary['posture'] => {
  const [standing, lying] = [count(row, 'standing'), count(row, 'lying')];
  if (standing > 0 && lying > 0) return 'mixed';
  if (standing > 0) return 'standing';
  return lying > 0 ? 'lying' : 'unknown';
};

/** The strictest setting that holds pairs. */
const openingOf = (pairs: Readonly<Record<ComparableSetting, number>>): ComparableSetting => {
  if (pairs.strict > 0) return 'strict';
  return pairs.caution > 0 ? 'caution' : pairs.all > 0 ? 'all' : 'strict';
};

/** What the whole data version holds, before any filter. */
export const summaryOf = async (
  engine: Engine,
  settings: Settings,
  model: CohortModel,
  asOf: IsoDate,
): Promise<CohortSummary> => {
  const lean = model.bases.of(model.catalogue.measure(model.lean));
  const [totals] = await engine.query(`SELECT COUNT(*) AS visits, CAST(SUM(readings) AS INTEGER) AS readings,
  COUNT(DISTINCT client_key) AS clients, MIN(visit_date) AS first_visit,
  COUNT(*) FILTER (WHERE visit_date >= p.monday) AS since_monday,
  COUNT(*) FILTER (WHERE visit_date >= p.monday AND broken & ${String(masksFor(model.masks, model.catalogue.measure(model.lean)).no)} = 0 AND guards = 0
    AND NOT (${outsidePath(model.catalogue.measure(model.lean), 'visits')})) AS usable,
  COUNT(*) FILTER (WHERE by_procedure <> 0) AS by_procedure, COUNT(r_h) AS with_impedance, COUNT(bmi) AS with_bmi,
  COUNT(*) FILTER (WHERE posture = 'standing') AS standing, COUNT(*) FILTER (WHERE posture = 'lying') AS lying
FROM visits CROSS JOIN params AS p`);
  const [coverageRow] = await engine.query(coverageQuery);
  const programs = await engine.query(
    'SELECT program, COUNT(DISTINCT client_key) AS clients FROM enrolments GROUP BY program ORDER BY program',
  );
  const sites = await engine.query("SELECT DISTINCT site FROM visits WHERE site <> '' ORDER BY site");
  const rank = isExported(model.catalogue.measure(model.lean)) ? 'pair_rank_exported' : 'pair_rank';
  const [pairs] = await engine.query(`SELECT COUNT(*) FILTER (WHERE ${rank} <= 1) AS strict,
  COUNT(*) FILTER (WHERE ${rank} <= 2) AS caution, COUNT(*) AS every, COUNT(*) FILTER (WHERE ${rank} = 1) AS by_procedure
FROM pairs WHERE purpose = 1 AND bases & ${String(1 << lean.index)} <> 0`);
  const coverage = coverageFrom(coverageRow);
  const pairsBySetting = {
    strict: count(pairs, 'strict'),
    caution: count(pairs, 'caution'),
    all: count(pairs, 'every'),
  };
  return {
    asOf,
    firstVisit: String(totals?.['first_visit']) as IsoDate,
    clients: count(totals, 'clients'),
    visits: count(totals, 'visits'),
    readings: count(totals, 'readings'),
    visitsSinceMonday: count(totals, 'since_monday'),
    usableSinceMonday: count(totals, 'usable'),
    programs: programs.map((row) => ({ name: String(row['program']), clients: Number(row['clients']) })),
    sites: sites.map((row) => String(row['site'])),
    coverage,
    conditionsKnown: coverage.some((entry) => entry.recorded + entry.byProcedure > 0),
    hasImpedance: count(totals, 'with_impedance') > 0,
    knowsBmi: count(totals, 'with_bmi') > 0,
    pairsBySetting,
    byProcedure: { visits: count(totals, 'by_procedure'), pairs: count(pairs, 'by_procedure') },
    openingSetting: settings.comparable ?? openingOf(pairsBySetting),
    posture: postureOf(totals),
  };
};
