import { doubleLiteral } from '../../measures/compile-sql';
import type { Equation } from '../../measures/equation';
import type { GuardCode } from '../../measures/guard';
import type { Measure } from '../../measures/measure';

const outside = (column: string, [low, high]: readonly [number, number]): string =>
  `(${column} < ${doubleLiteral(low)} OR ${column} > ${doubleLiteral(high)})`;

const path = (equation: Equation, visit: string): string =>
  [
    ...(equation.electrodePath === null
      ? []
      : [
          `COALESCE(${visit}.first_path <> '${equation.electrodePath}' OR ${visit}.last_path <> '${equation.electrodePath}', FALSE)`,
        ]),
    ...(equation.frequencyKhz === null
      ? []
      : [`COALESCE(${visit}.frequency_khz <> ${doubleLiteral(equation.frequencyKhz)}, FALSE)`]),
  ].join(' OR ');

/** SQL: whether any reading of a visit (an alias of `visits`) was on another path or frequency than the value's equation. */
export const outsidePath = ({ equation }: Pick<Measure, 'equation'>, visit: string): string =>
  (equation === undefined ? '' : path(equation, visit)) || 'FALSE';

const ageConditions = (
  { population: { ageYears, ageFrom } }: Equation,
  visit: string,
): readonly { readonly code: GuardCode; readonly when: string }[] => {
  const age = `${visit}.completed_age`;
  if (ageYears !== undefined) return [{ code: 'age_outside_equation', when: outside(age, ageYears) }];
  return ageFrom === undefined ? [] : [{ code: 'age_outside_equation', when: `${age} < ${doubleLiteral(ageFrom)}` }];
};

/** SQL conditions, by guard: a visit lies outside the group that the equation was made for. Unknown never does. */
export const outsideConditions = (
  equation: Equation,
  visit: string,
): readonly { readonly code: GuardCode; readonly when: string }[] => {
  const { population, posture } = equation;
  const paths = path(equation, visit);
  return [
    ...(population.bmi === undefined
      ? []
      : [{ code: 'bmi_outside_equation' as const, when: outside(`${visit}.bmi`, population.bmi) }]),
    ...ageConditions(equation, visit),
    ...(population.sex === undefined
      ? []
      : [{ code: 'sex_outside_equation' as const, when: `${visit}.sex <> '${population.sex}'` }]),
    ...(paths === '' ? [] : [{ code: 'not_the_equations_path' as const, when: paths }]),
    ...(posture === 'lying' ? [{ code: 'lying_equation_standing' as const, when: `${visit}.any_standing = 1` }] : []),
    ...(posture === 'standing' ? [{ code: 'standing_equation_lying' as const, when: `${visit}.any_lying = 1` }] : []),
  ];
};
