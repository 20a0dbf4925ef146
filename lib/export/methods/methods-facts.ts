import { isExported } from '../../cohort/is-exported';
import type { PrecisionRow } from '../../cohort/types/precision-row';
import type { Equation } from '../../measures/equation';
import type { Measure } from '../../measures/measure';
import type { MeasureId } from '../../measures/measure-id';
import type { MethodsInput } from './methods-input';

/** The reported values that are followed, each once. */
export const reportedMeasures = ({ catalogue, reported }: MethodsInput): readonly Measure[] =>
  [...new Set(reported)].filter(catalogue.follows).map(catalogue.measure);

const usesComposition = (equation: Equation): boolean =>
  equation.branches.some(({ terms, dividedBy }) =>
    [...terms, ...(dividedBy?.terms ?? [])].some(({ regressor }) => regressor === 'ffm' || regressor === 'fm'),
  );

/** The equations behind the reported values, by quantity, each once. */
export const describedEquations = (input: MethodsInput): readonly Equation[] => {
  const { ffm, smm, asm, tbw, ecw } = input.catalogue.equations;
  const needed = new Set(reportedMeasures(input).map(({ equation }) => equation?.id));
  const resting = input.restingEnergy;
  if (resting !== null && usesComposition(resting)) needed.add(ffm.id);
  const inForce = [ffm, smm, asm, tbw, ecw].filter((equation) => equation !== null);
  return [...inForce.filter(({ id }) => needed.has(id)), ...(resting === null ? [] : [resting])];
};

/** The errors of the reported values, in their order. */
export const reportedPrecision = (input: MethodsInput): readonly PrecisionRow[] =>
  reportedMeasures(input).flatMap(({ id }) => input.precision.find(({ measure }) => measure === id) ?? []);

/** The lean value whose pairs are counted. */
export const leanOf = ({ catalogue, settings }: MethodsInput): MeasureId =>
  catalogue.follows(settings.leanMeasure) ? settings.leanMeasure : 'ffm';

/** Composition is reported, computed here or exported. */
export const reportsComposition = (input: MethodsInput): boolean =>
  reportedMeasures(input).some(({ group }) => group === 'composition' || group === 'composition-exported');

export const reportsExported = (input: MethodsInput): boolean => reportedMeasures(input).some(isExported);

/** Vectors need impedance. */
export const reportsVectors = ({ vectors, summary }: MethodsInput): boolean => vectors && summary.hasImpedance;

/** Agreement of values that enough people hold in both ways. */
export const shownAgreements = ({ agreements }: MethodsInput) =>
  agreements.flatMap(({ computed, agreement }) => (agreement === undefined ? [] : [{ computed, n: agreement.n }]));
