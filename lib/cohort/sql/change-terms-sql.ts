import { doubleLiteral } from '../../measures/compile-sql';
import { partOf, type Equation, type Regressor, type TermPart } from '../../measures/equation';
import { coefficientsOf, regressorsOf } from '../../measures/linear-parts';
import type { Measure, MeasureParts } from '../../measures/measure';
import { regressorMean } from './visits-sql';

/** A term's coefficient times how far its regressor moved, for one form or one for each sex; a term of 0 needs no value. */
const times = (equation: Equation, regressor: Regressor, moved: string): string => {
  const { F, M } = coefficientsOf(equation, regressor);
  const own = (coefficient: number): string => (coefficient === 0 ? '0E0' : `${doubleLiteral(coefficient)} * ${moved}`);
  return F === M ? own(M) : `(CASE a.sex WHEN 'M' THEN ${own(M)} WHEN 'F' THEN ${own(F)} END)`;
};

const HEIGHT: Readonly<Partial<Record<Regressor, string>>> = {
  height: '(b.height_cm - a.height_cm)',
  height2: '(b.height_cm * b.height_cm - a.height_cm * a.height_cm)',
};

/** What a term gives to a part: H²/R counts at the mean squared height for resistance, at the mean of 1/R for height. */
const termPart = (
  equation: Equation,
  parts: MeasureParts,
  regressor: Regressor,
  part: Exclude<TermPart, 'none'>,
): string | undefined => {
  const mean = regressorMean(equation, parts, regressor);
  if (regressor === 'height2_per_resistance') {
    if (part === 'resistance')
      return times(
        equation,
        regressor,
        `0.5E0 * (a.height_cm * a.height_cm + b.height_cm * b.height_cm) * (b.${mean} - a.${mean})`,
      );
    if (part === 'height')
      return times(
        equation,
        regressor,
        `0.5E0 * (a.${mean} + b.${mean}) * (b.height_cm * b.height_cm - a.height_cm * a.height_cm)`,
      );
    return undefined;
  }
  if (partOf({ regressor, coefficient: 1 }) !== part) return undefined;
  return times(equation, regressor, HEIGHT[regressor] ?? `(b.${mean} - a.${mean})`);
};

/** The parts of the regression's own change. */
const regressionPart = (equation: Equation, parts: MeasureParts, part: Exclude<TermPart, 'none'>): string => {
  const terms = regressorsOf(equation).flatMap((regressor) => termPart(equation, parts, regressor, part) ?? []);
  return terms.length === 0 ? '0E0' : terms.join(' + ');
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
  const weights = regressorMean(equation, parts, 'weight');
  const own = parts.weightCoefficient === 1 ? `(b.${weights} - a.${weights})` : '0E0';
  const weight = `(${own} + ${signed(regressionPart(equation, parts, 'weight'))}) * ${scale}`;
  const part = (name: 'resistance' | 'reactance' | 'age'): string =>
    `${signed(regressionPart(equation, parts, name))} * ${scale}`;
  const others = { weight, resistance: part('resistance'), reactance: part('reactance'), age: part('age') };
  const height = parts.perHeightSquared
    ? `CASE WHEN a.height_cm = b.height_cm THEN 0E0 ELSE (b.${measure.id} - a.${measure.id}) - (${Object.values(others).join(' + ')}) END`
    : signed(regressionPart(equation, parts, 'height'));
  return { ...others, height };
};
