import type { Formatters } from '../../formatters';

/** Words that the figures say themselves: axes, levels, text alternatives, headers of the tables behind them. */
export const figures = (f: Formatters) => ({
  nothingToDraw: 'Nothing to draw: no value fits the filters.',
  group: (p: { label: string; n: number }) => `${p.label} (${f.number(p.n)})`,
  level: (p: { share: number }) => f.percent(p.share),
  leftOut: (p: { n: number }) =>
    f.plural(p.n, '# point is left out: its value is not a number.', '# points are left out: their values are not numbers.'),
});
