import { addDays, type IsoDate } from '../../lib/core/iso-date';
import type { ControlChartData } from '../../lib/figures/control-chart/spec';

const START = '2025-01-06' as IsoDate;

/** Weekly readings of a test body: from week 30 on, where a step is marked, they lie higher and have limits of their own; one lies outside before it. */
export const controlChartData: ControlChartData = {
  title: 'Resistance',
  unit: 'Ohm',
  digits: 1,
  readings: Array.from({ length: 44 }, (_, week) => ({
    key: `w${week}`,
    date: addDays(START, week * 7),
    value: 400 + ((week * 37) % 11) / 10 + (week >= 30 ? 1.4 : 0) + (week === 15 ? 1.5 : 0),
  })),
  segments: [
    { from: null, limits: { centre: 400.5, lower: 399.2, upper: 401.8 } },
    { from: addDays(START, 210), limits: { centre: 401.9, lower: 400.6, upper: 403.2 } },
  ],
  steps: [addDays(START, 210)],
};

export const emptyControlChartData: ControlChartData = {
  title: 'Resistance',
  unit: 'Ohm',
  digits: 1,
  readings: [],
  segments: [],
  steps: [],
};
