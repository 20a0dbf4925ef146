import type { UnitPreference } from '../../../lib/core/units';
import { shownUnit } from '../../../lib/core/units';
import type { Equation } from '../../../lib/measures/equation';
import { evaluate } from '../../../lib/measures/evaluate';
import type { Expression } from '../../../lib/measures/expression';
import type { InputId, Inputs } from '../../../lib/measures/input-id';

/** A field of the calculator; a height in feet and inches takes two. */
export type FieldId = InputId | 'height_ft' | 'height_in';

export type Typed = Readonly<Partial<Record<FieldId, string>>>;

const UNIT_OF = {
  weight_kg: 'kg',
  height_cm: 'cm',
  r_ohm: 'Ohm',
  xc_ohm: 'Ohm',
  age_years: 'a',
  sex_male: '1',
  ffm_kg: 'kg',
  fm_kg: 'kg',
  smm_kg: 'kg',
  tbw_l: 'L',
  ecw_l: 'L',
  phase_angle_deg: 'deg',
  waist_cm: 'cm',
  arm_cm: 'cm',
  calf_cm: 'cm',
  weight_change_kg: 'kg',
  fm_change_kg: 'kg',
  ffm_change_kg: 'kg',
  thigh_cm: 'cm',
  body_volume_l: 'L',
  bone_mineral_kg: 'kg',
} as const satisfies Readonly<Record<InputId, string>>;

/** The unit in which a person types an input. */
export const unitTyped = (input: InputId, units: UnitPreference): string => shownUnit(UNIT_OF[input], units).label;

/** Whether the height is typed in feet and inches. */
export const inFeet = (units: UnitPreference): boolean => units.length === 'ft-in';

/** A typed number: undefined where nothing is typed, NaN where it is no number; point or comma as decimal mark. */
export const typedNumber = (text: string | undefined): number | undefined => {
  const trimmed = text?.trim().replace('−', '-') ?? '';
  if (trimmed === '') return undefined;
  return /^[-+]?\d*[.,]?\d+$/.test(trimmed) ? Number(trimmed.replace(',', '.')) : Number.NaN;
};

const heightInFeet = (typed: Typed): number | undefined => {
  const feet = typedNumber(typed.height_ft);
  const inches = typedNumber(typed.height_in);
  return feet === undefined ? undefined : (feet * 12 + (inches ?? 0)) * 2.54;
};

const inputFrom = (input: InputId, typed: Typed, units: UnitPreference): number | undefined => {
  if (input === 'height_cm' && inFeet(units)) return heightInFeet(typed);
  const number = typedNumber(typed[input]);
  return number === undefined ? undefined : number / shownUnit(UNIT_OF[input], units).factor;
};

/** What a calculator found. */
export interface Calculated {
  /** In the expression's unit; undefined where it cannot be computed. */
  readonly value: number | undefined;
  readonly missing: readonly InputId[];
  readonly notNumbers: readonly InputId[];
  /** What lies outside the equation's group, as far as it was typed. */
  readonly outside: readonly ('age' | 'sex' | 'bmi')[];
}

const outsideGroup = (equation: Equation, inputs: Inputs): Calculated['outside'] => {
  const { ageYears, ageFrom, bmi, sex } = equation.population;
  const { age_years: age, sex_male: male, weight_kg: weight, height_cm: height } = inputs;
  const index = weight === undefined || height === undefined ? undefined : weight / (height / 100) ** 2;
  const completed = age === undefined ? undefined : Math.floor(age);
  const beyond = (value: number | undefined, range: readonly [number, number] | undefined): boolean =>
    value !== undefined && range !== undefined && (value < range[0] || value > range[1]);
  return [
    ...(beyond(completed, ageYears) || (completed !== undefined && ageFrom !== undefined && completed < ageFrom)
      ? (['age'] as const)
      : []),
    ...(sex !== undefined && male !== undefined && (male === 1) !== (sex === 'M') ? (['sex'] as const) : []),
    ...(beyond(index, bmi) ? (['bmi'] as const) : []),
  ];
};

/** The value of an expression from what was typed in a person's units. */
export const calculate = (
  expression: Expression,
  wanted: readonly InputId[],
  typed: Typed,
  units: UnitPreference,
  equation?: Equation,
): Calculated => {
  const given = wanted.map((input) => [input, inputFrom(input, typed, units)] as const);
  const notNumbers = given.filter(([, value]) => Number.isNaN(value)).map(([input]) => input);
  const inputs: Inputs = Object.fromEntries(given.filter(([, value]) => value !== undefined && !Number.isNaN(value)));
  const value = evaluate(expression, inputs);
  return {
    value: value !== undefined && Number.isFinite(value) ? value : undefined,
    missing: given.filter(([, one]) => one === undefined).map(([input]) => input),
    notNumbers,
    outside: equation === undefined ? [] : outsideGroup(equation, inputs),
  };
};
