import { daysBetween, type IsoDate } from '../core/iso-date';
import type { Row } from '../engine/types';
import { kilocaloriesIn } from '../measures/energy';
import { equationExpression, type Equation } from '../measures/equation';
import { evaluate } from '../measures/evaluate';
import { FORMULAS } from '../measures/formulas';
import type { GuardCode } from '../measures/guard';
import { inputsOf } from '../measures/inputs-of';
import type { CohortModel } from './model';
import { newestChange } from './newest-change';
import type { Ask } from './question';
import { guardsIn } from './reasons';
import { activityQuery, energyVisitQuery, waistVisitQuery } from './sql/client-energy-sql';
import type { ChangeRow } from './types/change-row';
import type { ClientVisit } from './types/client-detail';
import type { ClientEnergy, ClientWaist, TissueEnergy } from './types/client-energy';
import type { CohortFilter } from './types/filter';

/** A weight that holds collected fluid or another being, a body that still grows or lacks a part: no expenditure is estimated. */
const STOPS: readonly GuardCode[] = ['fluid', 'dialysis', 'pregnancy', 'body_geometry', 'under_18'];
const WAIST_STOPS: readonly GuardCode[] = ['pregnancy', 'under_18'];

const numberAt = (row: Row, name: string): number | undefined =>
  row[name] === null || row[name] === undefined ? undefined : Number(row[name]);

const newestOf = (rows: readonly ChangeRow[], measure: 'fm' | 'ffm'): ChangeRow | undefined =>
  newestChange(rows.filter((row) => row.measure === measure));

const isMoreThanError = ({ result }: ChangeRow): boolean => result === 'up' || result === 'down';
const isJudged = (row: ChangeRow): boolean => isMoreThanError(row) || row.result === 'within';

const tissueOf = (latest: readonly ChangeRow[]): TissueEnergy | null => {
  const [fm, ffm] = [newestOf(latest, 'fm'), newestOf(latest, 'ffm')];
  if (fm === undefined || ffm === undefined || fm.fromVisit !== ffm.fromVisit || fm.toVisit !== ffm.toVisit)
    return null;
  if (!isJudged(fm) || !isJudged(ffm) || !(isMoreThanError(fm) || isMoreThanError(ffm))) return null;
  const formula = FORMULAS.find(({ id }) => id === 'tissue-energy');
  const megajoules = formula && evaluate(formula.formula, { fm_change_kg: fm.change, ffm_change_kg: ffm.change });
  if (megajoules === undefined) return null;
  return {
    from: fm.from,
    to: fm.to,
    days: daysBetween(fm.from, fm.to),
    fmChange: fm.change,
    ffmChange: ffm.change,
    megajoules,
  };
};

/** What keeps composition at a visit from being read as a level: then no expenditure is made of it. */
const compositionStops = (model: CohortModel, visit: ClientVisit | undefined): readonly GuardCode[] => {
  const { stop, hold } = model.guards(model.catalogue.measure('ffm'));
  const { bmi } = visit?.values ?? {};
  const codes: readonly GuardCode[] = [
    ...(visit?.guards ?? []),
    ...(visit?.outsideEquation.ffm ?? []),
    ...(bmi !== undefined && (bmi < 16 || bmi > 34) ? (['bmi_outside_16_34'] as const) : []),
  ];
  return [...new Set(codes)].filter(
    (code) => stop.includes(code) || hold.includes(code) || code === 'lying_equation_standing',
  );
};

/** Resting energy expenditure at the latest visit by the equation in force, and the energy of the tissue that changed. */
export const clientEnergyOf = async (
  ask: Ask,
  model: CohortModel,
  equation: Equation | undefined,
  known: { readonly visits: readonly ClientVisit[]; readonly latest: readonly ChangeRow[] },
  filter: CohortFilter,
  options: { readonly clientKey: number; readonly signal?: AbortSignal | undefined },
): Promise<ClientEnergy | null> => {
  if (equation === undefined) return null;
  const [row] = await ask(energyVisitQuery(equation), filter, options);
  if (row === undefined) return null;
  const [recorded] = await ask(activityQuery, filter, options);
  const formula = equationExpression(equation);
  const guards = guardsIn(Number(row['guards']));
  const fromComposition = inputsOf(formula).some((input) => input === 'ffm_kg' || input === 'fm_kg');
  const visit = known.visits.find((one) => one.visit === Number(row['visit_no']));
  const stops = [
    ...new Set([
      ...guards.filter((code) => STOPS.includes(code)),
      ...(fromComposition ? compositionStops(model, visit) : []),
    ]),
  ];
  const inputs = {
    weight_kg: numberAt(row, 'weight'),
    height_cm: numberAt(row, 'height_cm'),
    age_years: numberAt(row, 'age_years'),
    sex_male: row['sex'] === 'M' ? 1 : row['sex'] === 'F' ? 0 : undefined,
    ffm_kg: numberAt(row, 'ffm'),
    fm_kg: numberAt(row, 'fm'),
  };
  const held = Object.fromEntries(Object.entries(inputs).filter(([, value]) => value !== undefined));
  const value = stops.length > 0 ? undefined : evaluate(formula, held);
  const perUnit = kilocaloriesIn(equation.unit);
  return {
    equation,
    on: String(row['visit_date']) as IsoDate,
    resting: value === undefined || perUnit === undefined ? null : value * perUnit,
    stops,
    outside: guardsIn(Number(row['outside'])),
    activity:
      recorded === undefined ? null : { level: Number(recorded['pal']), on: String(recorded['visit_date']) as IsoDate },
    tissue: tissueOf(known.latest),
  };
};

/** The client's latest waist; null where none was measured. */
export const clientWaistOf = async (
  ask: Ask,
  filter: CohortFilter,
  options: { readonly clientKey: number; readonly signal?: AbortSignal | undefined },
): Promise<ClientWaist | null> => {
  const [row] = await ask(waistVisitQuery, filter, options);
  if (row === undefined) return null;
  return {
    on: String(row['visit_date']) as IsoDate,
    waistCm: Number(row['waist']),
    ratio: numberAt(row, 'waist_height') ?? null,
    sex: row['sex'] as 'F' | 'M' | null,
    ageYears: numberAt(row, 'completed_age') ?? null,
    bmi: numberAt(row, 'bmi') ?? null,
    stops: guardsIn(Number(row['guards'])).filter((code) => WAIST_STOPS.includes(code)),
  };
};
