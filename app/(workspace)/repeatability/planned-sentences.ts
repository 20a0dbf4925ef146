import type { Level } from '../../../lib/cohort/types/filter';
import type { PrecisionRow } from '../../../lib/cohort/types/precision-row';
import type { Formatters } from '../../../lib/core/formatters';
import type { Messages } from '../../../lib/core/messages/en';
import type { Measure } from '../../../lib/measures/measure';
import { studyTools, type PlannedGain, type StudyPlan } from '../../../lib/workspace/study-tools';

const MOST = 500;

const whole = (text: string, least: number): number | undefined => {
  const value = Number(text);
  return text.trim() !== '' && Number.isInteger(value) && value >= least && value <= MOST ? value : undefined;
};

/** A plan as written; undefined where it is none. */
export const readPlan = (people: string, visits: string, readings: string): StudyPlan | undefined => {
  const [p, v, k] = [whole(people, 2), whole(visits, 2), whole(readings, 1)];
  return p === undefined || v === undefined || k === undefined ? undefined : { people: p, visits: v, readings: k };
};

interface Context {
  readonly row: PrecisionRow | undefined;
  readonly measure: Measure;
  readonly level: Level;
  readonly words: Messages['studyPlanner'];
  readonly formatters: Formatters;
}

/** What replicates buy of this value, from the two parts that are known here. */
const buysSentence = (readings: number, buys: PlannedGain['buys'], context: Context): readonly string[] => {
  if (buys === null) return [];
  const { measure, words, formatters } = context;
  const write = (value: number): string => formatters.quantity(value, measure.unit, measure.decimals + 1);
  const said = { value: measure.name, one: write(buys.one), floor: write(buys.floor) };
  return [readings > 1 ? words.buys({ ...said, planned: write(buys.planned), readings }) : words.buysOne(said)];
};

/** Degrees of freedom, whether they suffice, the interval that they leave, and what readings can and cannot buy. */
export const plannedSentences = (plan: StudyPlan, context: Context): readonly string[] => {
  const { words, formatters } = context;
  const { size, buys } = studyTools.plannedGain(plan, context.row, context.level);
  return [
    words.df({ between: size.dfBetween, within: size.dfWithin }),
    size.enough ? words.enough : words.notEnough({ people: size.peopleNeeded, visits: plan.visits }),
    ...(size.range === null
      ? []
      : [words.range({ low: formatters.number(size.range[0], 2), high: formatters.number(size.range[1], 2) })]),
    ...buysSentence(plan.readings, buys, context),
  ];
};
