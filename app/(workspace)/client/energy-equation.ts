import type { Formatters } from '../../../lib/core/formatters';
import type { Messages } from '../../../lib/core/messages/en';
import { equationExpression, type Equation } from '../../../lib/measures/equation';
import { inputsOf } from '../../../lib/measures/inputs-of';
import { valueMark } from '../../_state/value-mark';

/** An equation for energy with its mark, and the composition that it reads under the name and mark of `nameOf`. */
export const energyEquation = (
  equation: Equation,
  nameOf: (id: 'ffm' | 'fm') => string,
  messages: Messages,
  formatters: Formatters,
): string => {
  const inputs = inputsOf(equationExpression(equation));
  return messages.clientOwn.energy.equation({
    name: equation.name,
    mark: valueMark({ verification: equation.verification, equation }, messages.methods.mark) ?? null,
    from: formatters.list((['ffm', 'fm'] as const).filter((id) => inputs.includes(`${id}_kg`)).map(nameOf)),
  });
};
