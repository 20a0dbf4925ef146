import { logCharts, readLogEntry, type LogChart as Chart } from '../cohort/device-log';
import { plannedGain, type PlannedGain as Gain, type StudyPlan as Plan } from '../cohort/study-plan';

export type LogChart = Chart;
export type PlannedGain = Gain;
export type StudyPlan = Plan;

/** What the planner and the device log compute, for the screens. */
export const studyTools = { plannedGain, logCharts, readLogEntry } as const;
