import type { FigureTheme } from './figure-theme';
import { drawMark } from './mark';
import type { SvgNode } from './svg-node';
import type { LanePointState } from './time-lanes/data';

/** Filled: comparable with the baseline. Hollow: cannot be compared. Smaller and grey: held back from judgement. */
export const drawValuePoint = (
  state: LanePointState,
  x: number,
  y: number,
  radius: number,
  theme: FigureTheme,
): SvgNode => {
  const paint = {
    comparable: { fill: theme.ink, stroke: theme.ink },
    'not-comparable': { fill: theme.sheet, stroke: theme.ink },
    held: { fill: theme.inkSecond, stroke: theme.inkSecond, 'fill-opacity': 0.45, 'stroke-opacity': 0.45 },
  }[state];
  return drawMark('circle', x, y, state === 'held' ? radius * 0.8 : radius, {
    class: 'mark',
    'stroke-width': 1.4,
    ...paint,
  });
};
