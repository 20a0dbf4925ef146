import { equationExpression, type Equation, type EquationUnit } from './equation';
import { constant, product, type Expression } from './expression';

/** 1 kcal = 4.184 kJ (thermochemical, definition). */
const KJ_PER_KCAL = 4.184;

const FACTOR: Readonly<Record<EquationUnit, number>> = {
  kg: 1,
  L: 1,
  'kcal/d': 1,
  'kJ/d': 1 / KJ_PER_KCAL,
  'MJ/d': 1000 / KJ_PER_KCAL,
};

/** The unit in which equations of one quantity are compared: energy in kcal/d, the others as they are. */
export const commonUnit = ({ unit }: Equation): 'kg' | 'L' | 'kcal/d' =>
  unit === 'kg' || unit === 'L' ? unit : 'kcal/d';

/** The equation as an expression in the common unit. */
export const inCommonUnit = (equation: Equation): Expression => {
  const factor = FACTOR[equation.unit];
  const own = equationExpression(equation);
  return factor === 1 ? own : product(constant(factor), own);
};
