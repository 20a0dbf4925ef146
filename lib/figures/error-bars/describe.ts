import type { FigureWords } from '../figure-context';
import type { FigureTable } from '../figure-table';
import type { ErrorBarsSpec } from './spec';

/** The text alternative: each value's error with its range and source. */
export const describeErrorBars = (spec: ErrorBarsSpec, words: FigureWords): string =>
  spec.message ??
  `${words.errorBars({ title: spec.title, values: spec.bars.length })} ${spec.bars.map((bar) => bar.focusLabel).join('; ')}.`;

/** One row per value: estimate, range, source. */
export const tableErrorBars = (spec: ErrorBarsSpec, words: FigureWords): FigureTable => ({
  columns: [
    { title: words.columnValue, align: 'start' },
    { title: words.columnEstimate, align: 'end' },
    { title: words.columnRange, align: 'end' },
    { title: words.columnNote, align: 'start' },
  ],
  rows: spec.bars.map((bar) => [bar.label, bar.estimateText, bar.rangeText, bar.note]),
});
