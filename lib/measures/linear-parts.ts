import type { Equation, Regressor } from './equation';

/** Regressors whose change between two visits splits a change of the equation exactly. */
const SPLITS: ReadonlySet<Regressor> = new Set<Regressor>([
  'height2_per_resistance',
  'resistance',
  'reactance',
  'weight',
  'height',
  'height2',
  'age',
  'sex',
]);

/** Whether a change of the equation is the sum of its terms' changes: linear, and its form does not change with age. */
export const splitsIntoParts = (equation: Equation): boolean =>
  equation.branches.every(
    (branch) =>
      branch.dividedBy === undefined &&
      branch.ageFrom === undefined &&
      branch.ageBelow === undefined &&
      branch.terms.every(({ regressor }) => SPLITS.has(regressor)),
  );

/** A term's coefficient for each sex; 0 where the equation has no such term. */
export const coefficientsOf = (equation: Equation, regressor: Regressor): Readonly<Record<'F' | 'M', number>> => {
  const of = (sex: 'F' | 'M'): number =>
    equation.branches
      .find((branch) => branch.sex === undefined || branch.sex === sex)
      ?.terms.find((term) => term.regressor === regressor)?.coefficient ?? 0;
  return { F: of('F'), M: of('M') };
};

/** The regressors that an equation uses, each once. */
export const regressorsOf = (equation: Equation): readonly Regressor[] => [
  ...new Set(
    equation.branches.flatMap((branch) =>
      [...branch.terms, ...(branch.dividedBy?.terms ?? [])].map(({ regressor }) => regressor),
    ),
  ),
];
