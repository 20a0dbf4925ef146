import { range } from 'd3';
import type { Box } from '../box';
import type { FigureTheme } from '../figure-theme';
import { svgNode, type SvgNode } from '../svg-node';
import type { ShareFill } from './spec';

const STRIPE = 4;
const STROKE = 7;
const DOT = 6;

const line = (
  x1: number,
  y1: number,
  x2: number,
  y2: number,
  paint: Readonly<Record<string, string | number>>,
): SvgNode => svgNode('line', { x1, y1, x2, y2, ...paint });

/** Upright lines. */
const stripes = ({ left, right, top, bottom }: Box, theme: FigureTheme): readonly SvgNode[] =>
  range(left + STRIPE / 2, right, STRIPE).map((x) =>
    line(x, top, x, bottom, { stroke: theme.ink, 'stroke-width': 1.4 }),
  );

/** Slanted lines, cut off at the ends of the part. */
const strokes = ({ left, right, top, bottom }: Box, theme: FigureTheme): readonly SvgNode[] => {
  const height = bottom - top;
  return range(left - height + STROKE / 2, right, STROKE).map((x) => {
    const from = Math.max(x, left);
    const to = Math.min(x + height, right);
    return line(from, bottom - (from - x), to, bottom - (to - x), { stroke: theme.ink, 'stroke-width': 1.2 });
  });
};

/** Rows of dots; a part narrower than a dot has none. */
const dots = ({ left, right, top, bottom }: Box, theme: FigureTheme): readonly SvgNode[] =>
  (right - left <= DOT ? [] : range(top + DOT / 2 + 1, bottom, DOT)).map((y) =>
    line(left + DOT / 2, y, right - 1, y, {
      stroke: theme.inkSecond,
      'stroke-width': 1.8,
      'stroke-linecap': 'round',
      'stroke-dasharray': `0 ${String(DOT)}`,
    }),
  );

const insideOf = (fill: ShareFill, box: Box, theme: FigureTheme): readonly SvgNode[] => {
  switch (fill) {
    case 'stripes':
      return stripes(box, theme);
    case 'strokes':
      return strokes(box, theme);
    case 'dots':
      return dots(box, theme);
    case 'solid':
    case 'empty':
      return [];
  }
};

/** A part of a bar, or its swatch in the key: outline and filling, in ink alone. */
export const fillPart = (
  fill: ShareFill,
  box: Box,
  theme: FigureTheme,
  name: 'part' | 'mark' = 'part',
): readonly SvgNode[] => [
  svgNode('rect', {
    x: box.left,
    y: box.top,
    width: Math.max(0, box.right - box.left),
    height: box.bottom - box.top,
    fill: fill === 'solid' ? theme.inkSecond : theme.sheet,
  }),
  ...insideOf(fill, box, theme),
  svgNode('rect', {
    class: name,
    x: box.left,
    y: box.top,
    width: Math.max(0, box.right - box.left),
    height: box.bottom - box.top,
    stroke: fill === 'empty' ? theme.hair : theme.inkSecond,
  }),
];
