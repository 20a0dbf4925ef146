import type { Condition, Expression } from './expression';
import { INPUT_IDS, type InputId } from './input-id';

/** Which of an expression's cases are looked into: all, or those that can hold for one sex. */
type Reach = 'all' | 'F' | 'M';

const canHold = (conditions: readonly Condition[], reach: Reach): boolean => {
  if (reach === 'all') return true;
  const sex = reach === 'M' ? 1 : 0;
  return conditions.every(
    ({ input, from, below }) =>
      input !== 'sex_male' || ((from === undefined || sex >= from) && (below === undefined || sex < below)),
  );
};

const collect = (expression: Expression, found: Set<InputId>, reach: Reach): void => {
  switch (expression.op) {
    case 'input':
      found.add(expression.input);
      return;
    case 'constant':
      return;
    case 'sum':
    case 'product':
      for (const part of expression.of) collect(part, found, reach);
      return;
    case 'difference':
      collect(expression.minuend, found, reach);
      collect(expression.subtrahend, found, reach);
      return;
    case 'quotient':
      collect(expression.dividend, found, reach);
      collect(expression.divisor, found, reach);
      return;
    case 'square_root':
      collect(expression.of, found, reach);
      return;
    case 'angle_degrees':
      collect(expression.y, found, reach);
      collect(expression.x, found, reach);
      return;
    case 'choose':
      for (const { when, then } of expression.cases) {
        if (!canHold(when, reach)) continue;
        for (const condition of when) found.add(condition.input);
        collect(then, found, reach);
      }
  }
};

const reached = (expression: Expression, reach: Reach): readonly InputId[] => {
  const found = new Set<InputId>();
  collect(expression, found, reach);
  return INPUT_IDS.filter((id) => found.has(id));
};

/** The inputs that an expression reads, each once, in catalogue order. */
export const inputsOf = (expression: Expression): readonly InputId[] => reached(expression, 'all');

/** Those that it reads for one sex: a form for women may need what the one for men does not. */
export const inputsForSex = (expression: Expression, sex: 'F' | 'M'): readonly InputId[] => reached(expression, sex);
