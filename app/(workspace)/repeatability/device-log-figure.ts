import type { IsoDate } from '../../../lib/core/iso-date';
import type { ControlChartData } from '../../../lib/figures/control-chart/spec';
import type { LogChart } from '../../../lib/workspace/study-tools';

/** The figure's data of one chart. */
export const logFigure = ({ entries, segments, steps }: LogChart, title: string): ControlChartData => ({
  title,
  unit: 'Ohm',
  digits: 1,
  readings: entries.map(({ on, r }, index) => ({ key: String(index), date: on as IsoDate, value: r })),
  segments: segments.map(({ from, limits }) => ({ from, ...(limits === undefined ? {} : { limits }) })),
  steps: steps.map(({ on }) => on as IsoDate),
});
