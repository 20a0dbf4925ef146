import { mondayOf, type IsoDate } from '../core/iso-date';
import type { Engine } from '../engine/types';
import { buildTables } from './build';
import { changesOf } from './changes';
import { clientDetailOf } from './client-detail';
import { contactsOf } from './contacts';
import { CONVERTED, crossChecksFrom } from './cross-check';
import { errorStudyOf } from './error-study';
import { dueListsOf } from './due';
import { clientListOf, indicesOf } from './people';
import { programRowsOf } from './program-rows';
import { agreementsOf, comparisonOf, equationFitsOf, measuredWaysOf } from './methods';
import { chosenEquation } from './equations-in-force';
import { listedMeasures } from './listed-measures';
import { comparedSettingsOf } from './compared-settings';
import { coverageOf } from './coverage';
import { cohortModel } from './model';
import { createAsk } from './question';
import { createSerial } from '../core/serial';
import type { Settings } from './settings';
import { reviewCountsOf, reviewsOf } from './reviews';
import { crosscheckRowsQuery } from './sql/crosscheck-sql';
import { summaryOf } from './summary';
import type { Cohort } from './types/cohort';
import type { Level } from './types/filter';
import type { CohortErrors } from './types/precision-row';
import { vectorChangesOf } from './vector-changes';
import { vectorsOf } from './vectors';

/**
 * Builds the pipeline's tables on an engine that holds `readings`, `enrolment_rows` and `column_resolution`, and answers
 * questions on them. As-of is the latest accepted visit's date unless another day is asked for.
 */
export const createCohort = async (engine: Engine, settings: Settings, asOf: IsoDate): Promise<Cohort> => {
  const model = cohortModel(settings);
  const { precision, groupPrecision, vectorError } = await buildTables(engine, settings, model, asOf);
  const summary = await summaryOf(engine, settings, model, asOf);
  const ask = createAsk(engine, createSerial());
  const precisionAt: Cohort['precision'] = (level) => precision.get(level) ?? [];
  const groupPrecisionAt: Cohort['groupPrecision'] = (level) => groupPrecision.get(level) ?? [];
  const errorsAt = (level: Level): CohortErrors => ({
    everyone: precisionAt(level),
    groups: groupPrecisionAt(level),
  });
  return {
    catalogue: model.catalogue,
    lean: model.lean,
    listed: listedMeasures(model, summary),
    guards: (id) => model.guards(model.catalogue.measure(id)),
    rules: model.rules,
    summary,
    precision: precisionAt,
    errorFrom: model.study.errorFrom,
    groupPrecision: groupPrecisionAt,
    errorStudy: (filter, signal) => {
      const measure = model.catalogue.measure(filter.measure);
      const found = precisionAt(filter.level).find((row) => row.measure === measure.id);
      return errorStudyOf(ask, model, { measure, precision: found }, filter, signal);
    },
    crossChecks: async (filter, signal) => {
      const measures = [...new Set([...CONVERTED, filter.measure])].map((id) => model.catalogue.measure(id));
      const rows = await ask(crosscheckRowsQuery(measures, model), filter, { signal });
      return crossChecksFrom(rows, measures, settings.devices.conversions);
    },
    changes: (filter, purpose, signal) => changesOf(ask, model, filter, { purpose, signal }),
    programs: (filter, purpose, signal) =>
      programRowsOf(
        ask,
        model,
        filter,
        { purpose, errors: errorsAt(filter.level), programs: settings.programs },
        signal,
      ),
    reviews: (filter, signal) => reviewsOf(ask, model, filter, signal),
    reviewCounts: (filter, signal) => reviewCountsOf(ask, model, filter, signal),
    comparedSettings: (filter, purpose, signal) => comparedSettingsOf(ask, model, filter, purpose, signal),
    coverage: (by, filter, signal) => coverageOf(ask, model, by, filter, signal),
    vectors: (filter, signal) => vectorsOf(ask, model, filter, signal),
    indices: (filter, signal) => indicesOf(ask, model, filter, signal),
    equationFits: (filter, signal) => equationFitsOf(ask, model, filter, signal),
    measuredWays: (filter, signal) => measuredWaysOf(ask, filter, signal),
    agreements: (filter, signal) => agreementsOf(ask, model, filter, signal),
    compareEquations: (equations, filter, signal) => comparisonOf(ask, model, equations, filter, signal),
    contacts: (filter, signal) =>
      contactsOf(ask, filter, { asOf, model, settings, errors: errorsAt(filter.level) }, signal),
    due: (filter, signal) => dueListsOf(ask, filter, { asOf, monday: mondayOf(asOf), model, settings }, signal),
    clients: (filter, signal) => clientListOf(ask, filter, signal),
    client: (clientKey, filter, signal) =>
      clientDetailOf(
        ask,
        { model, settings, vectorError, errors: errorsAt, restingEquation: chosenEquation(settings, 'ree') },
        clientKey,
        filter,
        signal,
      ),
    vectorError: vectorError?.shown ?? null,
    vectorChanges: (filter, purpose, signal) => vectorChangesOf(ask, model, vectorError, filter, { purpose, signal }),
  };
};
