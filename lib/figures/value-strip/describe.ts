import type { FigureWords } from '../figure-context';
import type { FigureTable } from '../figure-table';
import type { ValueStripSpec } from './spec';

/** The text alternative: the values in order of date and the band. */
export const describeValueStrip = (spec: ValueStripSpec, words: FigureWords): string => {
  if (spec.points.length === 0) return words.stripEmpty({ title: spec.title });
  const values = words.valueStrip({ title: spec.title, values: spec.points.map((point) => point.valueLabel) });
  return spec.band === undefined
    ? `${values}.`
    : `${values}; ${words.stripBand({ low: spec.band.lowText, high: spec.band.highText })}`;
};

/** One row per value: date, value, whether it can be compared. */
export const tableValueStrip = (spec: ValueStripSpec, words: FigureWords): FigureTable => ({
  columns: [
    { title: words.columnDate, align: 'start' },
    { title: spec.title, align: 'end' },
    { title: words.columnState, align: 'start' },
  ],
  rows: spec.points.map((point) => [point.dateLabel, point.valueLabel, words.state[point.state]]),
});
