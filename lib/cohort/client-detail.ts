import type { IsoDate } from '../core/iso-date';
import type { Row } from '../engine/types';
import type { Equation } from '../measures/equation';
import { changeConfidenceOf } from './change-confidence';
import { changesOf } from './changes';
import { clientEnergyOf, clientWaistOf } from './client-energy';
import { clientVectorOf } from './client-vector';
import { clientVisitFrom, clientVisitsQuery } from './client-visits';
import type { CohortModel } from './model';
import { precisionFor } from './group-precision';
import { judgedMeasureOf } from './judged-measure';
import { newestChange } from './newest-change';
import type { Ask } from './question';
import type { Settings } from './settings';
import { weightIntention } from './weight-intention';
import type { ChangeRow } from './types/change-row';
import type { ClientDetail, ClientEnrolment, ClientVisit } from './types/client-detail';
import type { CohortFilter, Level } from './types/filter';
import type { CohortErrors } from './types/precision-row';
import type { MeasuredVectorError } from './vector-error';

const personQuery = `SELECT c.client_key, c.client_id, c.family_name, c.given_name, c.sex, c.series_height_cm,
  (SELECT v.completed_age FROM visits AS v WHERE v.client_key = c.client_key ORDER BY v.visit_no DESC LIMIT 1) AS age
FROM clients AS c CROSS JOIN filter AS f WHERE c.client_key = f.client_key`;

const sexesQuery = `SELECT r.sex, COUNT(*) AS n FROM readings AS r CROSS JOIN filter AS f CROSS JOIN params AS p
WHERE r.client_key = f.client_key AND r.sex IS NOT NULL AND r.visit_date <= p.as_of
GROUP BY r.sex ORDER BY n DESC, r.sex`;

const enrolmentsQuery = `SELECT e.program, e.program_start, e.program_end, e.end_reason, e.late_baseline, e.baseline_chosen,
  e.weight_change_intended, v.visit_date AS baseline,
  d.visit_date AS by_date
FROM enrolments AS e
CROSS JOIN filter AS f
LEFT JOIN visits AS v ON v.client_key = e.client_key AND v.visit_no = e.baseline_no
LEFT JOIN visits AS d ON d.client_key = e.client_key AND d.visit_no = e.by_date_no
WHERE e.client_key = f.client_key
ORDER BY e.program_start NULLS FIRST, e.enrolment_no`;

const text = (row: Row, name: string): string | null =>
  row[name] === null || row[name] === undefined ? null : String(row[name]);

const enrolmentFrom = (row: Row, settings: Settings): ClientEnrolment => ({
  program: String(row['program']),
  start: text(row, 'program_start') as IsoDate | null,
  end: text(row, 'program_end') as IsoDate | null,
  endReason: text(row, 'end_reason'),
  baseline: text(row, 'baseline') as IsoDate | null,
  lateBaseline: row['late_baseline'] === 1,
  baselineChosen: row['baseline_chosen'] === 1,
  baselineByDate: text(row, 'by_date') as IsoDate | null,
  weightIntended: weightIntention(
    settings.programs.find(({ name }) => name === row['program'])?.intended.weight ?? null,
    row['weight_change_intended'] === null ? null : row['weight_change_intended'] === 1,
  ),
});

/** Values that no visit of the client holds, with the inputs that are nowhere recorded. */
const missingFrom = (
  { catalogue }: CohortModel,
  visits: readonly ClientVisit[],
  latest: readonly ChangeRow[],
): ClientDetail['missing'] =>
  catalogue.measures
    .filter(
      (measure) =>
        measure.group !== 'composition-exported' &&
        measure.id !== 'phase_angle_exported' &&
        !latest.some((row) => row.measure === measure.id) &&
        !visits.some((visit) => visit.values[measure.id] !== undefined),
    )
    .map((measure) => ({
      measure: measure.id as CohortFilter['measure'],
      needs: measure.inputs,
    }));

/** What a client's page is made from beside the tables. */
export interface ClientSources {
  readonly model: CohortModel;
  readonly settings: Settings;
  readonly vectorError: MeasuredVectorError | undefined;
  readonly errors: (level: Level) => CohortErrors;
  /** The equation in force for resting energy expenditure. */
  readonly restingEquation: Equation | undefined;
}

/** Everything that one client's page shows. Filters on people do not apply: the client was chosen. */
export const clientDetailOf = async (
  ask: Ask,
  sources: ClientSources,
  clientKey: number,
  filter: CohortFilter,
  signal?: AbortSignal,
): Promise<ClientDetail | undefined> => {
  const { model } = sources;
  const alone: CohortFilter = { measure: filter.measure, level: filter.level, comparable: filter.comparable };
  const options = { clientKey, signal };
  const [person] = await ask(personQuery, alone, options);
  if (person === undefined) return undefined;
  const sexes = await ask(sexesQuery, alone, options);
  const enrolments = await ask(enrolmentsQuery, alone, options);
  const visits = (await ask(clientVisitsQuery(model), alone, options)).map((row) => clientVisitFrom(row, model));
  const latestChanges: ChangeRow[] = [];
  for (const measure of model.catalogue.measures) {
    latestChanges.push(...(await changesOf(ask, model, alone, { purpose: 'baseline-latest', measure, ...options })));
  }
  const chosen = model.catalogue.measure(judgedMeasureOf(latestChanges, filter.measure));
  const pairs = [
    ...latestChanges.filter(({ measure }) => measure === chosen.id),
    ...(await changesOf(ask, model, alone, { purpose: 'consecutive', measure: chosen, ...options })),
  ];
  const indexSteps = await changesOf(ask, model, alone, {
    purpose: 'consecutive',
    measure: model.catalogue.measure('ffmi'),
    ...options,
  });
  const vector = await clientVectorOf(ask, model, sources.vectorError, alone, options);
  const current = newestChange(latestChanges.filter(({ measure }) => measure === chosen.id));
  const errors = precisionFor(sources.errors(filter.level), chosen.id, current?.errorGroup ?? null);
  const confidence =
    current === undefined ? null : await changeConfidenceOf(ask, model, errors, alone, current, signal);
  const known = { visits, latest: latestChanges };
  const energy = await clientEnergyOf(ask, model, sources.restingEquation, known, alone, options);
  const waist = await clientWaistOf(ask, alone, options);
  return {
    clientKey,
    client: String(person['client_id']),
    familyName: text(person, 'family_name'),
    givenName: text(person, 'given_name'),
    sexForEquations: person['sex'] as 'F' | 'M' | null,
    sexesRecorded: sexes.map((row) => String(row['sex'])),
    ageAtLatest: person['age'] === null ? null : Number(person['age']),
    seriesHeightCm: person['series_height_cm'] === null ? null : Number(person['series_height_cm']),
    enrolments: enrolments.map((row) => enrolmentFrom(row, sources.settings)),
    visits,
    pairs,
    latestChanges,
    indexSteps,
    missing: missingFrom(model, visits, latestChanges),
    vector,
    confidence,
    energy,
    waist,
  };
};
