import type { Equation, Regressor } from '../../../lib/measures/equation';
import type { Formula } from '../../../lib/measures/formulas';
import type { MethodChoice } from '../../../lib/workspace/method-choices';

/** Where a formula is computed in the open clinic: beside the energy of one client, as a term of equations in force, or nowhere. */
export type FormulaUse =
  | { readonly kind: 'energy-of-tissue' }
  | { readonly kind: 'term'; readonly equations: readonly Equation[] }
  | { readonly kind: 'calculator' };

const reads = ({ branches }: Equation, wanted: Regressor): boolean =>
  branches.some(({ terms, dividedBy }) =>
    [...terms, ...(dividedBy?.terms ?? [])].some(({ regressor }) => regressor === wanted),
  );

/** What a clinic computes with a formula. The energy of tissue stands beside resting energy, so it needs an equation for that. */
export const formulaUse = (
  { id, regressor }: Pick<Formula, 'id' | 'regressor'>,
  choices: readonly MethodChoice[],
): FormulaUse => {
  const inForce = choices.flatMap(({ chosen }) => chosen ?? []);
  if (id === 'tissue-energy' && inForce.some(({ quantity }) => quantity === 'ree')) return { kind: 'energy-of-tissue' };
  const equations = regressor === undefined ? [] : inForce.filter((equation) => reads(equation, regressor));
  return equations.length === 0 ? { kind: 'calculator' } : { kind: 'term', equations };
};
