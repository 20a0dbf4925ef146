import { equationExpression, type Equation } from '../../lib/measures/equation';
import { FFM_KYLE_2001 } from '../../lib/measures/equations/ffm-kyle-2001';
import { PUBLISHED_EQUATIONS } from '../../lib/measures/equations/published-equations';
import { evaluate } from '../../lib/measures/evaluate';
import type { Inputs } from '../../lib/measures/input-id';

/** The value of an equation, which must be known. */
export const valueOf = (equation: Equation, inputs: Inputs): number => {
  const value = evaluate(equationExpression(equation), inputs);
  if (value === undefined) throw new Error(`${equation.id} is unknown`);
  return value;
};

/** A published equation by id. */
export const equationOf = (id: string): Equation => {
  const found = PUBLISHED_EQUATIONS.find((equation) => equation.id === id);
  if (found === undefined) throw new Error(`no equation ${id}`);
  return found;
};

const withComposition = (inputs: Inputs): Inputs => {
  const fatFree = valueOf(FFM_KYLE_2001, inputs);
  return { ...inputs, ffm_kg: fatFree, fm_kg: (inputs.weight_kg ?? NaN) - fatFree };
};

/** An invented man of 40 and an invented woman of 45 years; fat-free and fat mass by Kyle 2001. */
export const MAN: Inputs = withComposition({
  weight_kg: 80,
  height_cm: 178,
  age_years: 40,
  sex_male: 1,
  r_ohm: 480,
  xc_ohm: 52,
});
export const WOMAN: Inputs = withComposition({
  weight_kg: 65,
  height_cm: 165,
  age_years: 45,
  sex_male: 0,
  r_ohm: 580,
  xc_ohm: 55,
});
