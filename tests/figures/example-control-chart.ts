import { addDays, type IsoDate } from '../../lib/core/iso-date';
import type { ControlChartData } from '../../lib/figures/control-chart/spec';

const START = '2025-01-06' as IsoDate;

/** Weekly readings of a test body: from week 30 on they lie higher, some of them outside the limits of the first twenty. */
export const controlChartData: ControlChartData = {
  title: 'Resistance',
  unit: 'Ohm',
  digits: 1,
  readings: Array.from({ length: 44 }, (_, week) => ({
    key: `w${week}`,
    date: addDays(START, week * 7),
    value: 400 + ((week * 37) % 11) / 10 + (week >= 30 ? 1.4 : 0),
  })),
  limits: { centre: 400.5, lower: 399.2, upper: 401.8 },
  steps: [addDays(START, 210)],
};

export const emptyControlChartData: ControlChartData = {
  title: 'Resistance',
  unit: 'Ohm',
  digits: 1,
  readings: [],
  steps: [],
};
