import type { Branch, Equation, Regressor, Term } from '../../../lib/measures/equation';

/** Mathematics as a plain tree: elements of MathML with their text or their children. */
export interface MathTree {
  readonly tag: 'mrow' | 'mi' | 'mn' | 'mo' | 'mfrac' | 'msup' | 'msqrt' | 'mtext';
  readonly text?: string;
  readonly children?: readonly MathTree[];
}

const leaf = (tag: 'mi' | 'mn' | 'mo' | 'mtext', text: string): MathTree => ({ tag, text });
const row = (...children: readonly MathTree[]): MathTree => ({ tag: 'mrow', children });
export const fraction = (above: MathTree, below: MathTree): MathTree => ({ tag: 'mfrac', children: [above, below] });
export const squared = (base: MathTree): MathTree => ({ tag: 'msup', children: [base, leaf('mn', '2')] });
export const identifier = (text: string): MathTree => leaf('mi', text);
export const numeral = (text: string): MathTree => leaf('mn', text);
export const operator = (text: string): MathTree => leaf('mo', text);
export const mathRow = row;

const height2 = squared(identifier('H'));

const REGRESSOR_TREE: Readonly<Record<Regressor, MathTree>> = {
  height2_per_resistance: fraction(height2, identifier('R')),
  height2_per_impedance: fraction(height2, identifier('Z')),
  height2_per_reactance: fraction(height2, identifier('Xc')),
  resistance: identifier('R'),
  reactance: identifier('Xc'),
  weight: identifier('W'),
  height: identifier('H'),
  height2,
  age: identifier('age'),
  sex: identifier('sex'),
  ffm: identifier('FFM'),
  fm: identifier('FM'),
};

const signedNumber = (value: number, first: boolean): readonly MathTree[] => [
  ...(value < 0 ? [operator('−')] : first ? [] : [operator('+')]),
  numeral(String(Math.abs(value))),
];

const term = ({ coefficient, regressor }: Term, first: boolean): readonly MathTree[] => [
  ...signedNumber(coefficient, first),
  operator('·'),
  REGRESSOR_TREE[regressor],
];

const linear = (form: { readonly intercept: number; readonly terms: readonly Term[] }): MathTree => {
  const start = form.intercept === 0 ? [] : signedNumber(form.intercept, true);
  return row(...start, ...form.terms.flatMap((one, place) => term(one, start.length === 0 && place === 0)));
};

/** What a branch computes, as a tree. */
export const branchTree = (branch: Branch): MathTree =>
  branch.dividedBy === undefined ? linear(branch) : fraction(linear(branch), linear(branch.dividedBy));

/** The sign of what an equation estimates. */
export const quantitySign = ({ quantity }: Pick<Equation, 'quantity'>): string => quantity.toUpperCase();

/** `FFM = …` for one branch. */
export const equationTree = (equation: Equation, branch: Branch): MathTree =>
  row(identifier(quantitySign(equation)), operator('='), branchTree(branch));
