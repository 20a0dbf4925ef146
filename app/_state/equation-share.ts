import type { EquationFit } from '../../lib/cohort/types/methods';
import type { Messages } from '../../lib/core/messages/en';
import type { Measure } from '../../lib/measures/measure';
import type { TableFact } from '../../lib/workspace/table-file';

/** How many visits lie inside the group that the equation of a value was made for: for a figure, and for a table's file. */
export interface EquationShareWords {
  readonly sentence: string;
  readonly facts: readonly TableFact[];
}

/** Undefined where no equation stands behind the value, or no visit holds it. */
export const equationShare = (
  fits: readonly EquationFit[],
  { equation }: Pick<Measure, 'equation'>,
  excluded: boolean,
  { methods, table }: Messages,
): EquationShareWords | undefined => {
  const fit = equation && fits.find((one) => one.equation.id === equation.id);
  if (fit === undefined || fit.visits === 0) return undefined;
  const { inside, visits } = fit;
  return {
    sentence: methods.share.inside({ equation: fit.equation.name, inside, visits, excluded }),
    facts: [
      { title: table.facts.visits, value: visits },
      { title: table.facts.inside, value: inside },
    ],
  };
};
