import { doubleLiteral } from '../../measures/compile-sql';
import { partOf, type Equation, type Regressor, type TermPart } from '../../measures/equation';
import type { Measure } from '../../measures/measure';
import { regressorMean } from './visits-sql';

const coefficient = (equation: Equation, regressor: Regressor): number =>
  equation.terms.find((term) => term.regressor === regressor)?.coefficient ?? 0;

const linear = (equation: Equation, regressor: Regressor): string => {
  const column = regressorMean(equation, regressor);
  return `${doubleLiteral(coefficient(equation, regressor))} * (b.${column} - a.${column})`;
};

/** The parts of the regression's own change: resistance at the mean squared height, height at the mean of 1/R. */
const regressionPart = (equation: Equation, part: Exclude<TermPart, 'none'> | 'height'): string => {
  const inverse = regressorMean(equation, 'height2_per_resistance');
  const c = doubleLiteral(coefficient(equation, 'height2_per_resistance'));
  if (part === 'resistance') {
    return `${c} * 0.5E0 * (a.height_cm * a.height_cm + b.height_cm * b.height_cm) * (b.${inverse} - a.${inverse})`;
  }
  if (part === 'height') {
    return `${c} * 0.5E0 * (a.${inverse} + b.${inverse}) * (b.height_cm * b.height_cm - a.height_cm * a.height_cm)`;
  }
  const term = equation.terms.find((candidate) => partOf(candidate) === part);
  return term === undefined ? '0E0' : linear(equation, term.regressor);
};

export const TERM_PARTS = ['weight', 'resistance', 'reactance', 'height', 'age'] as const;

/**
 * SQL of a change's exact parts between visits `a` and `b`, which sum to the change; undefined for values that have
 * none. An index divides by the mean of 1/H² (H in metres); what a growing height adds is its height part.
 */
export const changeTerms = (measure: Measure): Readonly<Record<(typeof TERM_PARTS)[number], string>> | undefined => {
  const { equation, parts } = measure;
  if (equation === undefined || parts === undefined) return undefined;
  const scale = parts.perHeightSquared
    ? '(5000E0 * (1E0 / NULLIF(a.height_cm * a.height_cm, 0) + 1E0 / NULLIF(b.height_cm * b.height_cm, 0)))'
    : '1E0';
  const signed = (text: string): string => `(${parts.sign === 1 ? '' : '-'}(${text}))`;
  const weights = regressorMean(equation, 'weight');
  const own = parts.weightCoefficient === 1 ? `(b.${weights} - a.${weights})` : '0E0';
  const weight = `(${own} + ${signed(regressionPart(equation, 'weight'))}) * ${scale}`;
  const part = (name: 'resistance' | 'reactance' | 'age'): string =>
    `${signed(regressionPart(equation, name))} * ${scale}`;
  const others = { weight, resistance: part('resistance'), reactance: part('reactance'), age: part('age') };
  const height = parts.perHeightSquared
    ? `CASE WHEN a.height_cm = b.height_cm THEN 0E0 ELSE (b.${measure.id} - a.${measure.id}) - (${Object.values(others).join(' + ')}) END`
    : signed(regressionPart(equation, 'height'));
  return { ...others, height };
};
