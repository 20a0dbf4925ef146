import type { Condition, Expression } from './expression';
import type { Inputs } from './input-id';

const fold = (of: readonly Expression[], inputs: Inputs, start: number, step: (a: number, b: number) => number) => {
  let total = start;
  for (const part of of) {
    const value = evaluate(part, inputs);
    if (value === undefined) return undefined;
    total = step(total, value);
  }
  return total;
};

const holds = ({ input, from, below }: Condition, inputs: Inputs): boolean => {
  const value = inputs[input];
  return value !== undefined && (from === undefined || value >= from) && (below === undefined || value < below);
};

/**
 * The value of an expression for one reading; undefined where an input is unknown or a divisor is zero.
 * Its SQL twin is `compileExpression`; a property test holds the two together.
 */
export const evaluate = (expression: Expression, inputs: Inputs): number | undefined => {
  switch (expression.op) {
    case 'input':
      return inputs[expression.input];
    case 'constant':
      return expression.value;
    case 'sum':
      return fold(expression.of, inputs, 0, (a, b) => a + b);
    case 'product':
      return fold(expression.of, inputs, 1, (a, b) => a * b);
    case 'difference': {
      const minuend = evaluate(expression.minuend, inputs);
      const subtrahend = evaluate(expression.subtrahend, inputs);
      return minuend === undefined || subtrahend === undefined ? undefined : minuend - subtrahend;
    }
    case 'quotient': {
      const dividend = evaluate(expression.dividend, inputs);
      const divisor = evaluate(expression.divisor, inputs);
      return dividend === undefined || divisor === undefined || divisor === 0 ? undefined : dividend / divisor;
    }
    case 'square_root': {
      const value = evaluate(expression.of, inputs);
      return value === undefined || value < 0 ? undefined : Math.sqrt(value);
    }
    case 'angle_degrees': {
      const y = evaluate(expression.y, inputs);
      const x = evaluate(expression.x, inputs);
      return y === undefined || x === undefined ? undefined : (Math.atan2(y, x) * 180) / Math.PI;
    }
    case 'choose': {
      const chosen = expression.cases.find(({ when }) => when.every((condition) => holds(condition, inputs)));
      return chosen === undefined ? undefined : evaluate(chosen.then, inputs);
    }
  }
};
