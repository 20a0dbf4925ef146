import type { Level } from './types/filter';
import type { PrecisionRow } from './types/precision-row';
import { lscFloor, studySize, type PlannedStudy, type StudySize } from '../stats/study-size';

export type StudyPlan = PlannedStudy;

/** What a planned study would give, and what readings buy of a value whose two parts are known here. */
export interface PlannedGain {
  readonly size: StudySize;
  /** Least significant changes, in the value's unit: one reading at each end, the planned number, and the floor. */
  readonly buys: { readonly one: number; readonly planned: number; readonly floor: number } | null;
}

/** The planner's answer for one value at a level. */
export const plannedGain = (plan: StudyPlan, row: PrecisionRow | undefined, level: Level): PlannedGain => {
  const size = studySize(plan);
  if (row === undefined || row.sb === null || row.sw === null || row.factor === null || row.form === 'log')
    return { size, buys: null };
  if (row.twoBetween === null || row.within === null) return { size, buys: null };
  const { factor, twoBetween, within, sb } = row;
  const at = (k: number): number => factor * Math.sqrt(twoBetween + (2 * within) / k);
  return { size, buys: { one: at(1), planned: at(plan.readings), floor: lscFloor(sb, level / 100) } };
};
