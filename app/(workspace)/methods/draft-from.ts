import type { Equation } from '../../../lib/measures/equation';
import { EMPTY_BRANCH, type BranchDraft, type OwnDraft } from './own-draft';

const written = (value: number | undefined | null): string =>
  value === undefined || value === null ? '' : String(value);

const branchDraft = (equation: Equation, sex?: 'F' | 'M'): BranchDraft => {
  const branch = equation.branches.find((one) => one.sex === sex) ?? equation.branches[0];
  return branch === undefined
    ? EMPTY_BRANCH
    : {
        intercept: written(branch.intercept),
        terms: branch.terms.map(({ coefficient, regressor }) => ({ coefficient: written(coefficient), regressor })),
      };
};

/** Whether the form can hold an equation: one form, or one for each sex, without age bands. */
export const fitsForm = ({ branches }: Equation): boolean =>
  branches.every(({ ageFrom, ageBelow, dividedBy }) => (ageFrom ?? ageBelow ?? dividedBy) === undefined) &&
  (branches.length === 1 ||
    (branches.length === 2 && new Set(branches.map(({ sex }) => sex)).size === 2 && branches.every(({ sex }) => sex)));

/** A kept or read equation in the form. */
export const draftFrom = (equation: Equation, keptVersion: number): OwnDraft => {
  const { population, citation } = equation;
  return {
    id: equation.id,
    keptVersion,
    name: equation.name,
    quantity: equation.quantity,
    unit: equation.unit,
    form: equation.branches.length === 1 ? 'one' : 'sexes',
    sexCoding: equation.sexCoding.M === 1 ? 'men' : 'women',
    all: branchDraft(equation),
    F: branchDraft(equation, 'F'),
    M: branchDraft(equation, 'M'),
    description: population.description,
    n: written(population.n),
    ageFrom: written(population.ageYears?.[0]),
    ageTo: written(population.ageYears?.[1]),
    bmiFrom: written(population.bmi?.[0]),
    bmiTo: written(population.bmi?.[1]),
    sex: population.sex ?? 'both',
    path: equation.electrodePath ?? '',
    posture: equation.posture ?? 'none',
    frequency: written(equation.frequencyKhz),
    referenceMethod: equation.referenceMethod,
    see: written(equation.fit.see),
    authors: citation.authors.join(', '),
    title: citation.title ?? '',
    journal: citation.journal ?? citation.publisher ?? '',
    year: written(citation.year),
    doi: citation.doi ?? '',
  };
};
