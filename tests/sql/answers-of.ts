import type { Cohort } from '../../lib/cohort/types/cohort';
import type { CohortFilter, Purpose } from '../../lib/cohort/types/filter';
import type { Engine, Row } from '../../lib/engine/types';
import type { MeasureId } from '../../lib/measures/measure-id';

export const PURPOSES: readonly Purpose[] = ['baseline-latest', 'consecutive', 'baseline-review'];

/** The tables of the pipeline, each with the columns that order it. */
export const TABLES: Readonly<Record<string, string>> = {
  readings: 'reading_key',
  column_resolution: 'column_name',
  params: 'as_of',
  procedures: 'site, from_date, to_date, mask',
  client_answers: 'client_id',
  thresholds: 'measure, level, group_name',
  expected_change: 'program, measure, from_day',
  planned_reviews: 'program, target_day',
  planned_times: 'program, due_day',
  kept_enrolments: 'client_id, program, program_start',
  clients: 'client_key',
  site_days: 'site, visit_date',
  recorded_here: 'site, calendar_month',
  reading_values: 'reading_key',
  visits: 'client_key, visit_no',
  enrolments: 'enrolment_no',
  enrolment_latest: 'enrolment_no',
  reviews: 'enrolment_no, review_week',
  pairs: 'purpose, client_key, enrolment_no, review_week, from_no, to_no',
  baseline_grades: 'enrolment_no, visit_no',
  study_visits: 'client_key, visit_no, start_day',
};

/** How many rows each table holds. */
export const rowCountsOf = async (engine: Engine): Promise<Readonly<Record<string, number>>> => {
  const counts: Record<string, number> = {};
  for (const table of Object.keys(TABLES)) {
    const [row] = await engine.query(`SELECT COUNT(*) AS n FROM ${table}`);
    counts[table] = Number(row?.['n']);
  }
  return counts;
};

/** Every row of every table, in a complete order. */
export const tablesOf = async (engine: Engine): Promise<Readonly<Record<string, readonly Row[]>>> => {
  const tables: Record<string, readonly Row[]> = {};
  for (const [table, order] of Object.entries(TABLES)) {
    const keys = order.split(', ').map((column) => `${column} NULLS FIRST`);
    tables[table] = await engine.query(`SELECT * FROM ${table} ORDER BY ${keys.join(', ')}`);
  }
  return tables;
};

export const filterOf = (measure: MeasureId, more: Partial<CohortFilter> = {}): CohortFilter => ({
  measure,
  level: 95,
  comparable: 'caution',
  ...more,
});

/** Values of every kind: recorded, electrical, with and without an equation, an index, one the device computed. */
const CHANGED: readonly MeasureId[] = [
  'weight',
  'phase_angle',
  'r_h',
  'ffm',
  'fmi',
  'smm',
  'fat_percent',
  'ffm_exported',
];

/** Everything that one data version answers, in one object. */
export const answersOf = async (cohort: Cohort): Promise<Readonly<Record<string, unknown>>> => {
  const programs: unknown[] = [];
  const changes: unknown[] = [];
  for (const purpose of PURPOSES) {
    for (const measure of cohort.listed) programs.push(...(await cohort.programs(filterOf(measure), purpose)));
    for (const measure of CHANGED) changes.push(...(await cohort.changes(filterOf(measure), purpose)));
  }
  const narrow = filterOf('ffm', { level: 80, comparable: 'strict', sex: 'F', ageFrom: 30, ageTo: 70 });
  const clients = await cohort.clients(filterOf('ffm'));
  const [someone] = clients;
  return {
    summary: cohort.summary,
    precision: { 80: cohort.precision(80), 90: cohort.precision(90), 95: cohort.precision(95) },
    errorStudy: [await cohort.errorStudy(filterOf('ffm')), await cohort.errorStudy(filterOf('weight'))],
    crossChecks: await cohort.crossChecks(filterOf('ffm')),
    programs,
    changes,
    vectors: await cohort.vectors(filterOf('ffm')),
    vectorError: cohort.vectorError,
    vectorChanges: await cohort.vectorChanges(filterOf('ffm'), 'baseline-latest'),
    comparedSettings: await cohort.comparedSettings(filterOf('ffm'), 'baseline-latest'),
    coverage: [
      await cohort.coverage('site', filterOf('ffm')),
      await cohort.coverage('operator', filterOf('ffm')),
      await cohort.coverage('month', filterOf('ffm')),
    ],
    indices: await cohort.indices(filterOf('ffm')),
    contacts: await cohort.contacts(filterOf('ffm')),
    due: await cohort.due(filterOf('ffm')),
    reviews: await cohort.reviews(filterOf('ffm')),
    reviewCounts: await cohort.reviewCounts(filterOf('weight')),
    reviewVisits: [
      await cohort.reviews(filterOf('ffm', { reviewVisit: 'closest-comparable' })),
      await cohort.changes(filterOf('ffm', { reviewVisit: 'closest-comparable' }), 'baseline-review'),
      await cohort.changes(filterOf('ffm_exported', { reviewVisit: 'closest-comparable' }), 'baseline-review'),
      await cohort.changes(filterOf('ffm', { reviewVisit: 'first-in-window' }), 'baseline-review'),
    ],
    clients,
    client: await cohort.client(someone?.clientKey ?? 0, filterOf('ffm')),
    filtered: {
      programs: await cohort.programs(narrow, 'baseline-latest'),
      changes: await cohort.changes(narrow, 'consecutive'),
      vectors: await cohort.vectors(narrow),
      coverage: await cohort.coverage('month', narrow),
      contacts: await cohort.contacts(narrow),
      reviews: await cohort.reviews(narrow),
      reviewCounts: await cohort.reviewCounts({ ...narrow, reviewWeek: 12 }),
      clients: await cohort.clients(narrow),
    },
  };
};
