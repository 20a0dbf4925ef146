import type { FigureWords } from '../figure-context';
import type { FigureTable } from '../figure-table';
import type { ShareBarsSpec } from './spec';

/** The text alternative: each row's parts. */
export const describeShareBars = (spec: ShareBarsSpec, words: FigureWords): string =>
  spec.message ??
  `${words.shareBars({ title: spec.title, rows: spec.bars.length })} ${spec.bars.map((bar) => bar.focusLabel).join('; ')}.`;

/** One row per bar: the number of each part, and of all. */
export const tableShareBars = (spec: ShareBarsSpec, words: FigureWords): FigureTable => ({
  columns: [
    { title: words.columnGroup, align: 'start' },
    ...spec.parts.map(({ label }) => ({ title: label, align: 'end' as const })),
    { title: words.columnAll, align: 'end' },
  ],
  rows: spec.bars.map((bar) => [
    bar.label,
    ...spec.parts.map((part) => words.count({ n: bar.segments.find((one) => one.part.id === part.id)?.count ?? 0 })),
    words.count({ n: bar.total }),
  ]),
});
