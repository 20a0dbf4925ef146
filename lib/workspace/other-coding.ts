import { evaluate } from '../measures/evaluate';
import type { Measure } from '../measures/measure';
import type { ClientDetail, ClientVisit } from '../cohort/types/client-detail';

/**
 * A computed value of a visit under the other sex coding: the value as followed, plus what the equation adds when only the
 * coding is changed. In the value's unit; undefined where the value is not computed or no sex is in use.
 */
export const otherCoding = (
  measure: Measure,
  visit: ClientVisit,
  { sexForEquations, seriesHeightCm }: Pick<ClientDetail, 'sexForEquations' | 'seriesHeightCm'>,
  ageYears: number | null,
): { readonly sex: 'F' | 'M'; readonly value: number } | undefined => {
  const value = visit.values[measure.id];
  if (measure.equation === undefined || value === undefined || sexForEquations === null) return undefined;
  const { weight, r, xc } = visit.values;
  const inputs = {
    ...(weight === undefined ? {} : { weight_kg: weight }),
    ...(r === undefined ? {} : { r_ohm: r }),
    ...(xc === undefined ? {} : { xc_ohm: xc }),
    ...(seriesHeightCm === null ? {} : { height_cm: seriesHeightCm }),
    ...(ageYears === null ? {} : { age_years: ageYears }),
  };
  const [male, female] = [1, 0].map((sex) => evaluate(measure.formula, { ...inputs, sex_male: sex }));
  if (male === undefined || female === undefined) return undefined;
  const step = sexForEquations === 'M' ? female - male : male - female;
  return { sex: sexForEquations === 'M' ? 'F' : 'M', value: value + step };
};
