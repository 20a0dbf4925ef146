import type { Level } from '../../../lib/cohort/types/filter';
import type { PrecisionRow } from '../../../lib/cohort/types/precision-row';
import type { Formatters } from '../../../lib/core/formatters';
import type { Messages } from '../../../lib/core/messages/en';
import type { Measure } from '../../../lib/measures/measure';
import { lscFloor, studySize, type PlannedStudy } from '../../../lib/stats/study-size';

const MOST = 500;

const whole = (text: string, least: number): number | undefined => {
  const value = Number(text);
  return text.trim() !== '' && Number.isInteger(value) && value >= least && value <= MOST ? value : undefined;
};

/** A plan as written; undefined where it is none. */
export const readPlan = (people: string, visits: string, readings: string): PlannedStudy | undefined => {
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
const buysSentence = (readings: number, context: Context): readonly string[] => {
  const { row, measure, level, words, formatters } = context;
  if (row === undefined || row.sb === null || row.sw === null || row.factor === null || row.form === 'log') return [];
  if (row.twoBetween === null || row.within === null) return [];
  const { factor, twoBetween, within } = row;
  const write = (value: number): string => formatters.quantity(value, measure.unit, measure.decimals + 1);
  const at = (k: number): string => write(factor * Math.sqrt(twoBetween + (2 * within) / k));
  const said = { value: measure.name, one: at(1), floor: write(lscFloor(row.sb, level / 100)) };
  return [readings > 1 ? words.buys({ ...said, planned: at(readings), readings }) : words.buysOne(said)];
};

/** Degrees of freedom, whether they suffice, the interval that they leave, and what readings can and cannot buy. */
export const plannedSentences = (plan: PlannedStudy, context: Context): readonly string[] => {
  const { words, formatters } = context;
  const size = studySize(plan);
  return [
    words.df({ between: size.dfBetween, within: size.dfWithin }),
    size.enough ? words.enough : words.notEnough({ people: size.peopleNeeded, visits: plan.visits }),
    ...(size.range === null
      ? []
      : [words.range({ low: formatters.number(size.range[0], 2), high: formatters.number(size.range[1], 2) })]),
    ...buysSentence(plan.readings, context),
  ];
};
