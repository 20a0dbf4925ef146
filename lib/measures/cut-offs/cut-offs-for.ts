import { branchFor, type CutOffPerson } from './classify';
import {
  isCutOffInForceByDefault,
  type CutOff,
  type CutOffLimits,
  type CutOffMethod,
  type CutOffQuantity,
} from './cut-off';
import { PUBLISHED_CUT_OFFS } from './published-cut-offs';

/** A value for which cut-offs are wanted: what it is, how it came about, and what is known about the person. */
export interface CutOffQuestion extends CutOffPerson {
  readonly quantity: CutOffQuantity;
  /** The equation that the value was computed with. */
  readonly equationId?: string;
  /** The value is the exporter’s own: no cut-off of an equation is offered, whatever the export says about it. */
  readonly exported?: boolean;
  /** How body composition was measured; impedance where nothing else is said. */
  readonly method?: 'bia' | 'dxa';
  readonly bmi?: number;
  readonly pregnant?: boolean;
  /** Weight loss: months between the two weights. */
  readonly monthsApart?: number;
  /** Weight loss: whether it was meant. Unknown is not the same as unintended: it is asked first. */
  readonly lossIntended?: boolean;
  /** Ids of the cut-offs that the clinic switched on; without it those in force by default. */
  readonly chosen?: ReadonlySet<string>;
}

const isComposition = (method: CutOffMethod): boolean => method === 'bia' || method === 'dxa';

const isMeasuredSo = ({ methods }: CutOff, { method = 'bia' }: CutOffQuestion): boolean =>
  methods.some((candidate) => !isComposition(candidate) || candidate === method);

const isOfEquation = ({ equationIds }: CutOff, { equationId, exported }: CutOffQuestion): boolean =>
  equationIds === undefined || (exported !== true && equationId !== undefined && equationIds.includes(equationId));

const isWithin = (limits: CutOffLimits, question: CutOffQuestion): boolean => {
  const { bmi, pregnant, monthsApart, lossIntended } = question;
  if (limits.bmiBelow !== undefined && !(bmi !== undefined && bmi < limits.bmiBelow)) return false;
  if (limits.notInPregnancy === true && pregnant === true) return false;
  if (limits.onlyUnintended === true && lossIntended !== false) return false;
  if (limits.upToMonths !== undefined && !(monthsApart !== undefined && monthsApart <= limits.upToMonths)) return false;
  return limits.overMonths === undefined || (monthsApart !== undefined && monthsApart > limits.overMonths);
};

/**
 * The cut-offs by which a value may be classed: right quantity, method and equation, sex and age, inside the source’s
 * limits, and switched on. What is not known (BMI, months, whether a loss was meant) never counts as fulfilled.
 */
export const cutOffsFor = (
  question: CutOffQuestion,
  cutOffs: readonly CutOff[] = PUBLISHED_CUT_OFFS,
): readonly CutOff[] =>
  cutOffs.filter(
    (cutOff) =>
      cutOff.quantity === question.quantity &&
      (question.chosen?.has(cutOff.id) ?? isCutOffInForceByDefault(cutOff)) &&
      isMeasuredSo(cutOff, question) &&
      isOfEquation(cutOff, question) &&
      branchFor(cutOff, question) !== undefined &&
      isWithin(cutOff.limits, question),
  );
