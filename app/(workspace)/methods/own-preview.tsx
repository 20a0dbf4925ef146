'use client';

import { equationExpression, type Equation } from '../../../lib/measures/equation';
import { evaluate } from '../../../lib/measures/evaluate';
import type { Inputs } from '../../../lib/measures/input-id';
import { useFormatters, useMessages } from '../../_state/language-provider';
import { EquationFormula } from './equation-formula';

/** Two invented people, for a worked value; fat-free and fat mass as Kyle 2001 computes them. */
const MAN: Inputs = {
  weight_kg: 80,
  height_cm: 178,
  age_years: 40,
  r_ohm: 480,
  xc_ohm: 52,
  sex_male: 1,
  ffm_kg: 59.5573,
  fm_kg: 20.4427,
};
const WOMAN: Inputs = {
  weight_kg: 65,
  height_cm: 165,
  age_years: 45,
  r_ohm: 580,
  xc_ohm: 55,
  sex_male: 0,
  ffm_kg: 42.3757,
  fm_kg: 22.6243,
};

/** The formula of a typed equation and what it gives for two invented people. */
export const OwnPreview = ({ equation }: { readonly equation: Equation }) => {
  const words = useMessages().methodsOwn;
  const formatters = useFormatters();
  const written = (person: Inputs): string => {
    const value = evaluate(equationExpression(equation), person);
    return value === undefined ? words.workedUnknown : `${formatters.number(value, 2)}\u00A0${equation.unit}`;
  };
  return (
    <>
      <EquationFormula equation={equation} />
      <p>{words.worked({ value: written(MAN) })}</p>
      <p>{words.workedWoman({ value: written(WOMAN) })}</p>
    </>
  );
};
