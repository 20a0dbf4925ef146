import type { IsoDate } from '../core/iso-date';
import type { Row } from '../engine/types';
import type { Equation } from '../measures/equation';
import type { GuardCode } from '../measures/guard';
import type { MeasureId } from '../measures/measure-id';
import { limitsOfAgreement } from '../stats/limits-of-agreement';
import { quantileType7 } from '../stats/quantile-type-7';
import type { CohortModel } from './model';
import type { Ask } from './question';
import { agreementQuery, comparisonQuery, fitQuery, measuredWaysQuery } from './sql/methods-sql';
import { outsideConditions } from './sql/outside-equation-sql';
import type { CohortFilter } from './types/filter';
import type {
  AgreementPoint,
  EquationComparison,
  EquationDifference,
  EquationFit,
  ExportAgreement,
  MeasuredWay,
} from './types/methods';

const at = (row: Row | undefined, name: string): number => Number(row?.[name] ?? 0);

/** For each equation in force: how many of the visits that it computed lie in the group it was made for. */
export const equationFitsOf = async (
  ask: Ask,
  { catalogue }: CohortModel,
  filter: CohortFilter,
  signal?: AbortSignal,
): Promise<readonly EquationFit[]> => {
  const { ffm, smm, asm, tbw, ecw } = catalogue.equations;
  const fits: EquationFit[] = [];
  for (const equation of [ffm, smm, asm, tbw, ecw]) {
    if (equation === null) continue;
    const [row] = await ask(fitQuery(equation), filter, { signal });
    const codes: readonly GuardCode[] = outsideConditions(equation, 'v').map(({ code }) => code);
    fits.push({
      quantity: equation.quantity,
      equation,
      visits: at(row, 'visits'),
      inside: at(row, 'inside'),
      outside: codes.map((code) => ({ code, visits: at(row, code) })),
    });
  }
  return fits;
};

const textAt = (row: Row, name: string): string | null =>
  row[name] === null || row[name] === undefined ? null : String(row[name]);

/** How the visits with a resistance were measured, the most frequent way first. */
export const measuredWaysOf = async (
  ask: Ask,
  filter: CohortFilter,
  signal?: AbortSignal,
): Promise<readonly MeasuredWay[]> =>
  (await ask(measuredWaysQuery, filter, { signal })).map((row) => ({
    device: textAt(row, 'device'),
    electrodePath: textAt(row, 'electrode_path'),
    posture: textAt(row, 'posture') as MeasuredWay['posture'],
    frequencyKhz: row['frequency_khz'] === null ? null : at(row, 'frequency_khz'),
    visits: at(row, 'visits'),
  }));

/** Values that exist in two ways: computed here and as the device exported them. */
const TWICE: readonly (readonly [MeasureId, MeasureId])[] = [
  ['ffm', 'ffm_exported'],
  ['fm', 'fm_exported'],
  ['smm', 'smm_exported'],
  ['tbw', 'tbw_exported'],
  ['ecw', 'ecw_exported'],
  ['phase_angle', 'phase_angle_exported'],
];

const pointFrom = (row: Row): AgreementPoint => ({
  clientKey: at(row, 'client_key'),
  client: String(row['client_id']),
  date: String(row['visit_date']) as IsoDate,
  computed: at(row, 'computed'),
  exported: at(row, 'exported'),
});

/** Exported against computed values, one latest visit per client that no guard stops; values that nobody holds twice are left out. */
export const agreementsOf = async (
  ask: Ask,
  model: CohortModel,
  filter: CohortFilter,
  signal?: AbortSignal,
): Promise<readonly ExportAgreement[]> => {
  const agreements: ExportAgreement[] = [];
  for (const [computed, exported] of TWICE) {
    if (!model.catalogue.follows(computed)) continue;
    const points = (await ask(agreementQuery(computed, exported, model), filter, { signal })).map(pointFrom);
    if (points.length === 0) continue;
    const differences = points.map((point) => point.exported - point.computed);
    agreements.push({ computed, exported, points, agreement: limitsOfAgreement(differences) });
  }
  return agreements;
};

const differenceOf = (equation: Equation, rows: readonly Row[], index: number): EquationDifference | undefined => {
  const held = rows.filter((row) => row['value_0'] !== null && row[`value_${String(index)}`] !== null);
  if (held.length === 0) return undefined;
  const differences = held.map((row) => at(row, `value_${String(index)}`) - at(row, 'value_0'));
  const n = differences.length;
  const mean = differences.reduce((total, difference) => total + difference, 0) / n;
  const squares = differences.reduce((total, difference) => total + (difference - mean) ** 2, 0);
  const quantile = (p: number): number => quantileType7(differences, p) ?? mean;
  return {
    equation,
    n,
    outside: held.filter((row) => row['outside_0'] === 1 || row[`outside_${String(index)}`] === 1).length,
    mean,
    sd: n < 2 ? null : Math.sqrt(squares / (n - 1)),
    quantiles: {
      p5: quantile(0.05),
      p25: quantile(0.25),
      p50: quantile(0.5),
      p75: quantile(0.75),
      p95: quantile(0.95),
    },
    differences,
  };
};

/** Equations of one quantity against one of them, on each client's latest visit. Equations without a value are left out. */
export const comparisonOf = async (
  ask: Ask,
  model: CohortModel,
  equations: { readonly against: Equation; readonly others: readonly Equation[] },
  filter: CohortFilter,
  signal?: AbortSignal,
): Promise<EquationComparison> => {
  const { against, others } = equations;
  const rows = await ask(comparisonQuery([against, ...others], model), filter, { signal });
  return {
    quantity: against.quantity,
    against,
    differences: others.flatMap((equation, index) => differenceOf(equation, rows, index + 1) ?? []),
  };
};
