import type { Expression } from './expression';
import { INPUT_IDS, type InputId } from './input-id';

const collect = (expression: Expression, found: Set<InputId>): void => {
  switch (expression.op) {
    case 'input':
      found.add(expression.input);
      return;
    case 'constant':
      return;
    case 'sum':
    case 'product':
      for (const part of expression.of) collect(part, found);
      return;
    case 'difference':
      collect(expression.minuend, found);
      collect(expression.subtrahend, found);
      return;
    case 'quotient':
      collect(expression.dividend, found);
      collect(expression.divisor, found);
      return;
    case 'square_root':
      collect(expression.of, found);
      return;
    case 'angle_degrees':
      collect(expression.y, found);
      collect(expression.x, found);
      return;
    case 'choose':
      for (const { when, then } of expression.cases) {
        for (const condition of when) found.add(condition.input);
        collect(then, found);
      }
  }
};

/** The inputs that an expression reads, each once, in catalogue order. */
export const inputsOf = (expression: Expression): readonly InputId[] => {
  const found = new Set<InputId>();
  collect(expression, found);
  return INPUT_IDS.filter((id) => found.has(id));
};
