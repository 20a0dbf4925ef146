import type { Expression } from './expression';
import type { InputId } from './input-id';

/** The expression with an input replaced by another expression; conditions keep their inputs. */
export const substitute = (expression: Expression, input: InputId, by: Expression): Expression => {
  const inside = (part: Expression): Expression => substitute(part, input, by);
  switch (expression.op) {
    case 'input':
      return expression.input === input ? by : expression;
    case 'constant':
      return expression;
    case 'sum':
    case 'product':
      return { ...expression, of: expression.of.map(inside) };
    case 'difference':
      return { op: 'difference', minuend: inside(expression.minuend), subtrahend: inside(expression.subtrahend) };
    case 'quotient':
      return { op: 'quotient', dividend: inside(expression.dividend), divisor: inside(expression.divisor) };
    case 'square_root':
      return { op: 'square_root', of: inside(expression.of) };
    case 'angle_degrees':
      return { op: 'angle_degrees', y: inside(expression.y), x: inside(expression.x) };
    case 'choose':
      return { op: 'choose', cases: expression.cases.map(({ when, then }) => ({ when, then: inside(then) })) };
  }
};
