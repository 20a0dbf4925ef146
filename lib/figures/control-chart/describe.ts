import type { FigureWords } from '../figure-context';
import type { FigureTable } from '../figure-table';
import type { ControlChartSpec } from './spec';

/** The text alternative: how many readings, the limits, how many lie outside, the steps. */
export const describeControlChart = (spec: ControlChartSpec, words: FigureWords): string =>
  spec.message ??
  [
    words.control({
      title: spec.title,
      n: spec.points.length,
      outside: spec.points.filter(({ outside }) => outside).length,
    }),
    ...spec.bands.map(({ lines, since }) =>
      words.controlBand({ lines: lines.map(({ text }) => text), since: since ?? null }),
    ),
    ...spec.steps.map(({ label }) => `${label}.`),
  ].join(' ');

/** One row per reading: date, value, inside or outside the limits. */
export const tableControlChart = (spec: ControlChartSpec, words: FigureWords): FigureTable => ({
  columns: [
    { title: words.columnDate, align: 'start' },
    { title: spec.y.title, align: 'end' },
    { title: words.columnLimits, align: 'start' },
  ],
  rows: spec.points.map(({ dateText, valueText, noteText }) => [dateText, valueText, noteText]),
});
