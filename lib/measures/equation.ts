import { constant, input, product, quotient, sum, type Expression } from './expression';
import type { InputId } from './input-id';

/** What a term of a regression multiplies its coefficient with. */
export type Regressor = 'height2_per_resistance' | 'weight' | 'reactance' | 'sex_male' | 'age';

/** Which part of a change a term explains (statistics: each change is the sum of its parts). */
export type TermPart = 'resistance' | 'weight' | 'reactance' | 'age' | 'none';

export interface Term {
  readonly coefficient: number;
  readonly regressor: Regressor;
}

/** How far a formula was verified. */
export type Verification = 'read-in-abstract' | 'read-in-secondary-text' | 'definition' | 'from-memory';

export interface Population {
  readonly description: string;
  readonly ageYears?: readonly [number, number];
  readonly bmi?: readonly [number, number];
}

/**
 * A published regression as data. Units: height cm, weight kg, resistance and reactance Ω at 50 kHz, age in decimal
 * years, sex 1 for M and 0 for F; the result is in kg.
 */
export interface Equation {
  readonly id: string;
  readonly name: string;
  readonly intercept: number;
  readonly terms: readonly Term[];
  readonly sexCoding: Readonly<{ M: 1; F: 0 }>;
  readonly population: Population;
  readonly posture: 'lying' | 'standing';
  readonly electrodePath: string;
  readonly frequencyKhz: number;
  readonly referenceMethod: string;
  readonly source: string;
  readonly doi?: string;
  readonly verification: Verification;
}

/** The input that a regressor adds linearly; H²/R is handled apart. */
const REGRESSOR_INPUT: Readonly<Record<Exclude<Regressor, 'height2_per_resistance'>, InputId>> = {
  weight: 'weight_kg',
  reactance: 'xc_ohm',
  sex_male: 'sex_male',
  age: 'age_years',
};

const PART: Readonly<Record<Regressor, TermPart>> = {
  height2_per_resistance: 'resistance',
  weight: 'weight',
  reactance: 'reactance',
  sex_male: 'none',
  age: 'age',
};

/** The part of a change to which a term belongs. */
export const partOf = (term: Term): TermPart => PART[term.regressor];

/** The regressor itself as an expression. */
export const regressorExpression = (regressor: Regressor): Expression =>
  regressor === 'height2_per_resistance'
    ? quotient(product(input('height_cm'), input('height_cm')), input('r_ohm'))
    : input(REGRESSOR_INPUT[regressor]);

/** The whole equation as an expression. */
export const equationExpression = (equation: Equation): Expression =>
  sum(
    constant(equation.intercept),
    ...equation.terms.map((term) => product(constant(term.coefficient), regressorExpression(term.regressor))),
  );
