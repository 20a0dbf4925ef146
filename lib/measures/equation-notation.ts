import type { Branch, Equation, Regressor, Term } from './equation';

/** The field's signs of the regressors. */
export const REGRESSOR_SIGN: Readonly<Record<Regressor, string>> = {
  height2_per_resistance: 'H²/R',
  height2_per_impedance: 'H²/Z',
  height2_per_reactance: 'H²/Xc',
  resistance: 'R',
  reactance: 'Xc',
  weight: 'W',
  height: 'H',
  height2: 'H²',
  age: 'age',
  sex: 'sex',
  ffm: 'FFM',
  fm: 'FM',
};

/** A coefficient with the decimals that the paper prints, a true minus before it. */
const coefficient = (value: number): string => String(Math.abs(value));

const termText = (term: Term, first: boolean): string => {
  const sign = term.coefficient < 0 ? (first ? '−' : ' − ') : first ? '' : ' + ';
  return `${sign}${coefficient(term.coefficient)}·${REGRESSOR_SIGN[term.regressor]}`;
};

const linearText = (form: { readonly intercept: number; readonly terms: readonly Term[] }): string => {
  if (form.intercept === 0) return form.terms.map((term, place) => termText(term, place === 0)).join('');
  const start = `${form.intercept < 0 ? '−' : ''}${coefficient(form.intercept)}`;
  return `${start}${form.terms.map((term) => termText(term, false)).join('')}`;
};

const branchText = (branch: Branch): string =>
  branch.dividedBy === undefined ? linearText(branch) : `(${linearText(branch)}) / (${linearText(branch.dividedBy)})`;

const forWhom = ({ sex, ageFrom, ageBelow }: Branch): string => {
  const age =
    ageFrom === undefined
      ? ageBelow === undefined
        ? ''
        : `under ${String(ageBelow)} years`
      : ageBelow === undefined
        ? `from ${String(ageFrom)} years`
        : `${String(ageFrom)} to under ${String(ageBelow)} years`;
  return [sex ?? '', age].filter((text) => text !== '').join(' ');
};

/** The equation in the field's notation on one line; forms for one sex or age follow each other with who they are for. */
export const equationNotation = (equation: Equation): string =>
  equation.branches
    .map((branch) => {
      const who = forWhom(branch);
      return who === '' ? branchText(branch) : `${who}: ${branchText(branch)}`;
    })
    .join('; ');
