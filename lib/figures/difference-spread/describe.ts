import type { FigureWords } from '../figure-context';
import type { FigureTable } from '../figure-table';
import type { DifferenceSpreadSpec } from './spec';

/** The text alternative: each row's median with the range that holds nine of ten people. */
export const describeDifferenceSpread = (spec: DifferenceSpreadSpec, words: FigureWords): string =>
  spec.message ??
  `${words.spread({ title: spec.axis.title, rows: spec.rows.length })} ${spec.rows.map(({ focusLabel }) => focusLabel).join('; ')}.`;

/** One row per equation: median, 5 to 95 %, n. */
export const tableDifferenceSpread = (spec: DifferenceSpreadSpec, words: FigureWords): FigureTable => ({
  columns: [
    { title: words.columnEquation, align: 'start' },
    { title: `${words.columnMedian}: ${spec.axis.title}`, align: 'end' },
    { title: words.columnMostPeople, align: 'end' },
    { title: words.columnSeen, align: 'end' },
  ],
  rows: spec.rows.map((row) => [
    row.label,
    row.medianText,
    words.range({ low: row.lowText, high: row.highText }),
    row.nText,
  ]),
});
