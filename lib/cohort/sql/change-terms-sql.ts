import { doubleLiteral } from '../../measures/compile-sql';
import { partOf, type Equation, type Regressor, type TermPart } from '../../measures/equation';
import { coefficientsOf, regressorsOf } from '../../measures/linear-parts';
import type { Measure } from '../../measures/measure';
import { regressorMean } from './visits-sql';

/** A term's coefficient as SQL: a number, or one for each sex. */
const coefficient = (equation: Equation, regressor: Regressor): string => {
  const { F, M } = coefficientsOf(equation, regressor);
  return F === M
    ? doubleLiteral(M)
    : `(CASE a.sex WHEN 'M' THEN ${doubleLiteral(M)} WHEN 'F' THEN ${doubleLiteral(F)} END)`;
};

const linear = (equation: Equation, regressor: Regressor): string => {
  const column = regressorMean(equation, regressor);
  return `${coefficient(equation, regressor)} * (b.${column} - a.${column})`;
};

const HEIGHT: Readonly<Partial<Record<Regressor, string>>> = {
  height: '(b.height_cm - a.height_cm)',
  height2: '(b.height_cm * b.height_cm - a.height_cm * a.height_cm)',
};

/** What a term gives to a part: H²/R counts at the mean squared height for resistance, at the mean of 1/R for height. */
const termPart = (equation: Equation, regressor: Regressor, part: Exclude<TermPart, 'none'>): string | undefined => {
  if (regressor === 'height2_per_resistance') {
    const inverse = regressorMean(equation, regressor);
    const c = coefficient(equation, regressor);
    if (part === 'resistance')
      return `${c} * 0.5E0 * (a.height_cm * a.height_cm + b.height_cm * b.height_cm) * (b.${inverse} - a.${inverse})`;
    if (part === 'height')
      return `${c} * 0.5E0 * (a.${inverse} + b.${inverse}) * (b.height_cm * b.height_cm - a.height_cm * a.height_cm)`;
    return undefined;
  }
  if (partOf({ regressor, coefficient: 1 }) !== part) return undefined;
  const heights = HEIGHT[regressor];
  return heights === undefined ? linear(equation, regressor) : `${coefficient(equation, regressor)} * ${heights}`;
};

/** The parts of the regression's own change. */
const regressionPart = (equation: Equation, part: Exclude<TermPart, 'none'>): string => {
  const terms = regressorsOf(equation).flatMap((regressor) => termPart(equation, regressor, part) ?? []);
  return terms.length === 0 ? '0E0' : terms.join(' + ');
};

export const TERM_PARTS = ['weight', 'resistance', 'reactance', 'height', 'age'] as const;

/** The visit's weight over the readings that hold the equation; the plain mean where the equation has no weight term. */
const ownWeight = (equation: Equation): string =>
  regressorsOf(equation).includes('weight') ? regressorMean(equation, 'weight') : 'weight';

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
  const weights = ownWeight(equation);
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
