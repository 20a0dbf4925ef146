import type { IsoDate } from '../core/iso-date';
import type { Engine, Row } from '../engine/types';
import { fillSettings } from './fill-settings';
import { groupPrecisionRows, readGroupInputs } from './group-precision';
import { precisionRows, type PrecisionInput } from './precision';
import type { CohortModel } from './model';
import type { Settings } from './settings';
import { fillConversionErrors, fillShifts } from './fill-conversions';
import { clientsStatement } from './sql/clients-sql';
import { convertedStatements } from './sql/converted-sql';
import { enrolmentsStatements } from './sql/enrolments-sql';
import { logSumsQuery } from './sql/log-sums-sql';
import { pairsStatements } from './sql/pairs-sql';
import { betweenSumsQuery, withinSumsQuery } from './sql/precision-sql';
import { readingValuesStatement, siteStatements } from './sql/reading-values-sql';
import { reviewsStatements } from './sql/reviews-sql';
import { studyStatements } from './sql/study-visits-sql';
import { thresholdGroupsStatement } from './sql/visit-groups-sql';
import { visitsStatements } from './sql/visits-sql';
import type { Level } from './types/filter';
import type { PrecisionRow } from './types/precision-row';
import { readVectorError, type MeasuredVectorError } from './vector-error';

export const LEVELS: readonly Level[] = [80, 90, 95];

const readPrecision = async (engine: Engine, model: CohortModel): Promise<PrecisionInput> => {
  const [within] = await engine.query(withinSumsQuery(model));
  const [between] = await engine.query(betweenSumsQuery(model));
  const decimals = await engine.query('SELECT column_name, decimals FROM column_resolution');
  const logs = new Map<string, Row>();
  for (const { measure } of model.study.logForm) {
    if (!model.catalogue.follows(measure)) continue;
    const [row] = await engine.query(logSumsQuery(model.catalogue.measure(measure), model));
    if (row !== undefined) logs.set(measure, row);
  }
  const nothing: Row = {};
  return {
    within: within ?? nothing,
    between: between ?? nothing,
    logs,
    decimals: new Map(
      decimals.flatMap((row) =>
        row['decimals'] === null ? [] : [[String(row['column_name']), Number(row['decimals'])]],
      ),
    ),
  };
};

/** A group with an own threshold of any value has a row for each: its own, or everyone's again. */
const thresholdRows = (
  everyone: readonly PrecisionRow[],
  groups: readonly PrecisionRow[],
): readonly (readonly [string, PrecisionRow])[] => [
  ...everyone.map((row) => ['', row] as const),
  ...[...new Set(groups.map(({ group }) => group))].flatMap((name) =>
    everyone.map(
      (row) => [name ?? '', groups.find((own) => own.group === name && own.measure === row.measure) ?? row] as const,
    ),
  ),
];

const fillThresholds = async (
  engine: Engine,
  built: Pick<BuiltTables, 'precision' | 'groupPrecision'>,
): Promise<void> => {
  const values = [...built.precision].flatMap(([level, everyone]) =>
    thresholdRows(everyone, built.groupPrecision.get(level) ?? []).map(([group, row]) => [
      row.measure,
      level,
      row.tier,
      row.twoBetween,
      row.within,
      row.factor,
      row.atOwnValues === true ? 1 : 0,
      row.atOwnValues === true && row.sw !== null ? 2 * row.sw ** 2 : 0,
      row.form === 'log' ? 1 : 0,
      group,
      row.group === undefined ? 0 : 1,
    ]),
  );
  await engine.insert(
    'thresholds',
    [
      'measure',
      'level',
      'tier',
      'two_between',
      'within_variance',
      'factor',
      'at_own_values',
      'least',
      'is_log',
      'group_name',
      'own',
    ],
    values,
  );
};

/** What building the tables leaves for the questions. */
export interface BuiltTables {
  /** Everyone's error of each value. */
  readonly precision: ReadonlyMap<Level, readonly PrecisionRow[]>;
  /** What groups have of their own, where the clinic takes the error by groups. */
  readonly groupPrecision: ReadonlyMap<Level, readonly PrecisionRow[]>;
  readonly vectorError: MeasuredVectorError | undefined;
}

/**
 * readings → visits, enrolments → pairs, with the error study. Starts from the tables `readings`,
 * `enrolment_rows` and `column_resolution`; visits after as-of are not looked at.
 */
export const buildTables = async (
  engine: Engine,
  settings: Settings,
  model: CohortModel,
  asOf: IsoDate,
): Promise<BuiltTables> => {
  await fillSettings(engine, settings, asOf);
  const run = async (statements: readonly string[]): Promise<void> => {
    for (const statement of statements) await engine.run(statement);
  };
  await run([
    clientsStatement,
    ...siteStatements(model),
    readingValuesStatement(model, { table: 'reading_values' }),
    ...visitsStatements(model, { from: 'reading_values', to: 'visits' }),
  ]);
  if (model.conversionTargets > 0) {
    await fillShifts(engine, model, settings.devices.conversions);
    await run(convertedStatements(model));
  }
  await run([
    ...enrolmentsStatements(model),
    ...reviewsStatements(model),
    ...pairsStatements(model),
    ...studyStatements(model),
  ]);
  const input = await readPrecision(engine, model);
  const precision = new Map(
    LEVELS.map((level) => [level, precisionRows(model.catalogue.all, input, settings, level)] as const),
  );
  const inputs = await readGroupInputs(engine, model, input);
  const groupPrecision = new Map(
    LEVELS.map(
      (level) =>
        [level, groupPrecisionRows(model.catalogue.all, inputs, precision.get(level) ?? [], settings, level)] as const,
    ),
  );
  await fillThresholds(engine, { precision, groupPrecision });
  if (model.study.errorFrom !== 'everyone') await engine.run(thresholdGroupsStatement);
  await fillConversionErrors(engine, model, precision.get(95) ?? []);
  return { precision, groupPrecision, vectorError: await readVectorError(engine, model, settings) };
};
