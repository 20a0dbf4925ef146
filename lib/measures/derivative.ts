import { constant, difference, product, quotient, sum, type Expression } from './expression';
import type { InputId } from './input-id';

const NOTHING = constant(0);

const isZero = (expression: Expression): boolean => expression.op === 'constant' && expression.value === 0;

const isOne = (expression: Expression): boolean => expression.op === 'constant' && expression.value === 1;

const times = (...of: readonly Expression[]): Expression => {
  if (of.some(isZero)) return NOTHING;
  const factors = of.filter((factor) => !isOne(factor));
  const [first = constant(1), ...others] = factors;
  return others.length === 0 ? first : product(first, ...others);
};

const added = (of: readonly Expression[]): Expression => {
  const [first = NOTHING, ...others] = of.filter((part) => !isZero(part));
  return others.length === 0 ? first : sum(first, ...others);
};

const without = (minuend: Expression, subtrahend: Expression): Expression => {
  if (isZero(subtrahend)) return minuend;
  return difference(minuend, subtrahend);
};

const over = (dividend: Expression, divisor: Expression): Expression =>
  isZero(dividend) ? NOTHING : quotient(dividend, divisor);

/**
 * The partial derivative of a formula by one of its inputs, as a formula: unit of the value over unit of the input.
 * A `choose` is derived case by case, so it says nothing at the border between two cases. By the rules of calculus
 * (sum, product, quotient, chain; d atan2(y, x) = (x·dy − y·dx)/(x² + y²)).
 */
export const derivative = (expression: Expression, by: InputId): Expression => {
  switch (expression.op) {
    case 'input':
      return constant(expression.input === by ? 1 : 0);
    case 'constant':
      return NOTHING;
    case 'sum':
      return added(expression.of.map((part) => derivative(part, by)));
    case 'product':
      return added(
        expression.of.map((factor, place) =>
          times(derivative(factor, by), ...expression.of.filter((_, other) => other !== place)),
        ),
      );
    case 'difference':
      return without(derivative(expression.minuend, by), derivative(expression.subtrahend, by));
    case 'quotient': {
      const { dividend, divisor } = expression;
      const change = without(
        over(derivative(dividend, by), divisor),
        over(times(dividend, derivative(divisor, by)), product(divisor, divisor)),
      );
      return change;
    }
    case 'square_root':
      return over(derivative(expression.of, by), product(constant(2), expression));
    case 'angle_degrees': {
      const { x, y } = expression;
      const turn = without(times(x, derivative(y, by)), times(y, derivative(x, by)));
      return over(times(constant(180 / Math.PI), turn), sum(product(x, x), product(y, y)));
    }
    case 'choose':
      return {
        op: 'choose',
        cases: expression.cases.map(({ when, then }) => ({ when, then: derivative(then, by) })),
      };
  }
};
