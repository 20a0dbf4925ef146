import { kilocaloriesIn } from './energy';
import { equationExpression, type Equation } from './equation';
import { constant, product, type Expression } from './expression';

/** The unit in which equations of one quantity are compared: energy in kcal/d, the others as they are. */
export const commonUnit = ({ unit }: Equation): 'kg' | 'L' | 'kcal/d' =>
  unit === 'kg' || unit === 'L' ? unit : 'kcal/d';

/** The equation as an expression in the common unit. */
export const inCommonUnit = (equation: Equation): Expression => {
  const factor = kilocaloriesIn(equation.unit) ?? 1;
  const own = equationExpression(equation);
  return factor === 1 ? own : product(constant(factor), own);
};
