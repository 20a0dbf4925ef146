import type { Citation } from './citation';
import {
  choose,
  constant,
  difference,
  input,
  product,
  quotient,
  sum,
  type Condition,
  type Expression,
} from './expression';

/** What an equation estimates. */
export const QUANTITIES = ['ffm', 'smm', 'asm', 'tbw', 'ecw', 'ree'] as const;
export type Quantity = (typeof QUANTITIES)[number];

/** The unit in which the paper gives the result; screens and files convert energy to kcal/d. */
export type EquationUnit = 'kg' | 'L' | 'kcal/d' | 'kJ/d' | 'MJ/d';

/**
 * What a term multiplies its coefficient with. Heights in cm (`height2` cm²), weight, FFM and FM in kg, R, Xc and |Z| in Ω,
 * height² per … in cm²/Ω, age in decimal years; `sex` is the equation's own coding.
 */
export const REGRESSORS = [
  'height2_per_resistance',
  'height2_per_impedance',
  'height2_per_reactance',
  'resistance',
  'reactance',
  'weight',
  'height',
  'height2',
  'age',
  'sex',
  'ffm',
  'fm',
] as const;
export type Regressor = (typeof REGRESSORS)[number];

/** Which part of a change a term explains (statistics: each change is the sum of its parts). */
export type TermPart = 'resistance' | 'weight' | 'reactance' | 'height' | 'age' | 'none';

export interface Term {
  readonly coefficient: number;
  readonly regressor: Regressor;
}

/** A linear form for one sex or one age band [from, below); the first that fits counts. */
export interface Branch {
  readonly sex?: 'F' | 'M';
  readonly ageFrom?: number;
  readonly ageBelow?: number;
  readonly intercept: number;
  readonly terms: readonly Term[];
  /** The linear form is divided by this one (Horlick's form). */
  readonly dividedBy?: { readonly intercept: number; readonly terms: readonly Term[] };
}

/** How far a formula was verified. */
export const VERIFICATIONS = [
  'read-in-abstract',
  'read-in-secondary-text',
  'definition',
  'from-memory',
  'entered-by-clinic',
] as const;
export type Verification = (typeof VERIFICATIONS)[number];

export interface Population {
  readonly description: string;
  readonly n?: number;
  readonly ageYears?: readonly [number, number];
  /** Years, where only a lower end was given. */
  readonly ageFrom?: number;
  readonly bmi?: readonly [number, number];
  readonly sex?: 'F' | 'M';
  /** As the source that was read names it; never an input. */
  readonly ancestry?: string;
  /** Which of the figures above are from memory. */
  readonly fromMemory?: readonly ('n' | 'ageYears' | 'ageFrom' | 'bmi')[];
}

/** How well the equation fitted where it was made; the standard error in the equation's unit. */
export interface Fit {
  readonly r?: number;
  readonly r2?: number;
  readonly see?: number;
  readonly words?: string;
  readonly fromMemory?: boolean;
}

/**
 * A published regression as data. `electrodePath` and `frequencyKhz` are null for equations without impedance. A
 * from-memory equation is never in force unless the clinic switched it on.
 */
export interface Equation {
  readonly id: string;
  /** First author and year. */
  readonly name: string;
  readonly quantity: Quantity;
  readonly unit: EquationUnit;
  /** Raised with each change of a clinic's own equation; 1 for published ones. */
  readonly version: number;
  readonly branches: readonly Branch[];
  readonly sexCoding: { readonly M: 1; readonly F: 0 } | { readonly M: 0; readonly F: 1 };
  readonly population: Population;
  readonly posture: 'lying' | 'standing' | null;
  readonly electrodePath: string | null;
  readonly frequencyKhz: number | null;
  readonly referenceMethod: string;
  readonly fit: Fit;
  readonly citation: Citation;
  readonly verification: Verification;
  /** What exactly was read and what was not, one sentence. */
  readonly verificationNote: string;
  /** Known limits, each a sentence with its source. */
  readonly cautions: readonly string[];
}

const height = input('height_cm');
const heightSquared = product(height, height);
const impedanceSquared = sum(product(input('r_ohm'), input('r_ohm')), product(input('xc_ohm'), input('xc_ohm')));

const PART: Readonly<Record<Regressor, TermPart>> = {
  height2_per_resistance: 'resistance',
  height2_per_impedance: 'resistance',
  height2_per_reactance: 'reactance',
  resistance: 'resistance',
  reactance: 'reactance',
  weight: 'weight',
  height: 'height',
  height2: 'height',
  age: 'age',
  sex: 'none',
  ffm: 'none',
  fm: 'none',
};

/** The part of a change to which a term belongs. */
export const partOf = (term: Term): TermPart => PART[term.regressor];

const regressorExpression = (regressor: Regressor, sexCoding: Equation['sexCoding']): Expression => {
  switch (regressor) {
    case 'height2_per_resistance':
      return quotient(heightSquared, input('r_ohm'));
    case 'height2_per_impedance':
      return quotient(heightSquared, { op: 'square_root', of: impedanceSquared });
    case 'height2_per_reactance':
      return quotient(heightSquared, input('xc_ohm'));
    case 'resistance':
      return input('r_ohm');
    case 'reactance':
      return input('xc_ohm');
    case 'weight':
      return input('weight_kg');
    case 'height':
      return height;
    case 'height2':
      return heightSquared;
    case 'age':
      return input('age_years');
    case 'sex':
      return sexCoding.M === 1 ? input('sex_male') : difference(constant(1), input('sex_male'));
    case 'ffm':
      return input('ffm_kg');
    case 'fm':
      return input('fm_kg');
  }
};

const linear = (
  form: { readonly intercept: number; readonly terms: readonly Term[] },
  sexCoding: Equation['sexCoding'],
): Expression =>
  sum(
    constant(form.intercept),
    ...form.terms.map((term) => product(constant(term.coefficient), regressorExpression(term.regressor, sexCoding))),
  );

const branchExpression = (branch: Branch, sexCoding: Equation['sexCoding']): Expression =>
  branch.dividedBy === undefined
    ? linear(branch, sexCoding)
    : quotient(linear(branch, sexCoding), linear(branch.dividedBy, sexCoding));

const conditionsOf = ({ sex, ageFrom, ageBelow }: Branch): readonly Condition[] => {
  const conditions: Condition[] = [];
  if (sex === 'M') conditions.push({ input: 'sex_male', from: 1 });
  if (sex === 'F') conditions.push({ input: 'sex_male', below: 1 });
  if (ageFrom !== undefined || ageBelow !== undefined)
    conditions.push({
      input: 'age_years',
      ...(ageFrom === undefined ? {} : { from: ageFrom }),
      ...(ageBelow === undefined ? {} : { below: ageBelow }),
    });
  return conditions;
};

/** The whole equation as an expression, in the equation's unit. */
export const equationExpression = (equation: Equation): Expression => {
  const [first, ...others] = equation.branches;
  if (first !== undefined && others.length === 0 && conditionsOf(first).length === 0)
    return branchExpression(first, equation.sexCoding);
  return choose(
    ...equation.branches.map((branch) => ({
      when: conditionsOf(branch),
      then: branchExpression(branch, equation.sexCoding),
    })),
  );
};
